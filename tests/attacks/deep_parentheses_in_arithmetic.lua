-- stops: error "C stack overflow"
-- Recursion through C: a comparator within a comparator within ...

rule "attack.deep_parentheses_in_arithmetic" {
  title = "Deep parentheses in arithmetic",
  stage = "final",
  judge = function(job, figure)
    local function down(n)
      table.sort({ 1, 2 }, function() return down(n + 1) < 0 end)
      return n
    end
    return down(1)
  end,
  mend = "Remove this rule.",
}
