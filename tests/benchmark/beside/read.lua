-- A reader of JSON in Lua alone, as short as it can be for lines that are known to be JSON.
local find, sub, byte = string.find, string.sub, string.byte
local ESCAPES = { n = "\n", t = "\t", r = "\r", b = "\b", f = "\f" }
local WORDS = { t = true, f = false }
local value

local function text(s, at)
  local stop = find(s, '["\\]', at)
  if byte(s, stop) == 34 then return sub(s, at, stop - 1), stop + 1 end
  local whole = at
  repeat
    stop = byte(s, stop) == 92 and find(s, '["\\]', stop + 2) or stop
  until byte(s, stop) == 34
  return (string.gsub(sub(s, whole, stop - 1), "\\(.)", function(c) return ESCAPES[c] or c end)),
    stop + 1
end

local function members(s, at)
  local object, key = {}, nil
  at = find(s, "%S", at)
  while byte(s, at) ~= 125 do
    key, at = text(s, at + 1)
    object[key], at = value(s, find(s, "[^%s:]", at))
    at = find(s, "[^%s,]", at)
  end
  return object, at + 1
end

local function items(s, at)
  local list = {}
  at = find(s, "%S", at)
  while byte(s, at) ~= 93 do
    list[#list + 1], at = value(s, at)
    at = find(s, "[^%s,]", at)
  end
  return list, at + 1
end

function value(s, at)
  local c = byte(s, at)
  if c == 123 then return members(s, at + 1) end
  if c == 91 then return items(s, at + 1) end
  if c == 34 then return text(s, at + 1) end
  local from, to = find(s, "^[-+.%deE]+", at)
  if from then return tonumber(sub(s, from, to)), to + 1 end
  from, to = find(s, "^%a+", at)
  return WORDS[sub(s, from, from)], to + 1
end

local function read(line) return (value(line, find(line, "%S"))) end
