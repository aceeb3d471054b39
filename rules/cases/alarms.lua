-- Cases of rules/alarms.lua. Quillbank County and the town of Stillbend are
-- invented; the demands are those of California sheets, named beside each.

local QUILLBANK, STILLBEND = "example/quillbank", "example/stillbend"

-- IRC R314.2.2 and R315.2.2, recalled: work on the outside is let off.
cases "alarms.smoke" {
  under = "model/irc-2021",
  { "the model code lets roofing off", expect = "not_applicable", says = "outside" },
}

-- A California statute: over 1,000.
cases "alarms.smoke" {
  under = QUILLBANK, from = "paperwork",
  { "everywhere they belong", expect = "pass" },
  { "none in the bedrooms", with = { ["alarms.smoke_at"] = { "outside_bedrooms", "each_story" } },
    expect = "fail", says = "each bedroom" },
  { "none outside them", with = { ["alarms.smoke_at"] = { "each_bedroom", "each_story" } },
    expect = "fail", says = "outside bedrooms" },
  { "none in the basement",
    with = { ["alarms.smoke_at"] = { "each_bedroom", "outside_bedrooms" } }, expect = "fail",
    says = "each story" },
  { "none at all", with = { ["alarms.smoke_at"] = { "none" } }, expect = "fail" },
  { "not told", without = { "alarms.smoke_at" }, expect = "open" },
  { "exactly 1,000 is not over it",
    with = { ["scope.price_usd"] = 1000, ["alarms.smoke_at"] = { "none" } },
    expect = "not_applicable" },
  { "1,000.01", with = { ["scope.price_usd"] = 1000.01, ["alarms.smoke_at"] = { "none" } },
    expect = "fail" },
  { "price not told", without = { "scope.price_usd" }, expect = "open" },
}

-- The later California text: any permit.
cases "alarms.smoke" {
  under = STILLBEND, from = "paperwork",
  { "a cheap job with a permit",
    with = { ["scope.price_usd"] = 400, ["alarms.smoke_at"] = { "none" } }, expect = "fail" },
  { "a cheap job without one",
    with = { ["scope.price_usd"] = 400, ["permit.status"] = "none",
      ["alarms.smoke_at"] = { "none" } }, expect = "not_applicable" },
  { "no permit, but at the price",
    with = { ["scope.price_usd"] = 1000, ["permit.status"] = "none",
      ["alarms.smoke_at"] = { "none" } }, expect = "fail" },
}

-- Only where something burns fuel, or a garage is attached.
cases "alarms.co" {
  under = QUILLBANK, from = "paperwork",
  { "everywhere they belong", expect = "pass" },
  { "none outside the bedrooms", with = { ["alarms.co_at"] = { "each_story" } },
    expect = "fail", says = "outside bedrooms" },
  { "outside the bedrooms alone", with = { ["alarms.co_at"] = { "outside_bedrooms" } },
    expect = "pass" },
  { "only a fireplace: one state's wording, not the model's",
    with = { ["house.co_sources"] = { "fireplace" }, ["alarms.co_at"] = { "none" } },
    expect = "not_applicable" },
  { "only a stove", with = { ["house.co_sources"] = { "fuel_appliance" },
    ["alarms.co_at"] = { "none" } }, expect = "fail" },
  { "a heater in a bedroom, no alarm there",
    with = { ["house.co_sources"] = { "bedroom_appliance" } }, expect = "fail",
    says = "fuel bedroom" },
  { "and with one there", with = { ["house.co_sources"] = { "bedroom_appliance" },
    ["alarms.co_at"] = { "fuel_bedroom", "outside_bedrooms", "each_story" } }, expect = "pass" },
  { "all electric, no garage",
    with = { ["house.co_sources"] = { "none" }, ["alarms.co_at"] = { "none" } },
    expect = "not_applicable" },
  { "all electric, but an attached garage",
    with = { ["house.co_sources"] = { "attached_garage" }, ["alarms.co_at"] = { "none" } },
    expect = "fail" },
  { "whatever the price, with a permit",
    with = { ["scope.price_usd"] = 900, ["alarms.co_at"] = { "none" } }, expect = "fail" },
  { "an empty list of fires says nothing", with = { ["house.co_sources"] = {} },
    expect = "open" },
  { "fires not told", without = { "house.co_sources" }, expect = "open" },
  { "alarms not told", without = { "alarms.co_at" }, expect = "open" },
  { "the model code lets roofing off", under = "model/irc-2021", expect = "not_applicable" },
}

cases "alarms.listed" {
  under = QUILLBANK, from = "paperwork",
  { "listed", expect = "pass" },
  { "one is not", with = { ["alarms.listed"] = false }, expect = "fail" },
  { "not told", without = { "alarms.listed" }, expect = "open" },
  { "the model code lets roofing off", under = "model/irc-2021", expect = "not_applicable" },
}

-- A California city: sealed batteries since 2014.
cases "alarms.power" {
  under = QUILLBANK, from = "paperwork",
  { "sealed battery", expect = "pass" },
  { "wired", with = { ["alarms.power"] = "wired" }, expect = "pass" },
  { "batteries that are changed", with = { ["alarms.power"] = "battery" }, expect = "fail" },
  { "not told", without = { "alarms.power" }, expect = "open" },
}

-- A California city: 3 ft from a bath door, 36 in from registers and fans.
cases "alarms.clearances" {
  under = QUILLBANK, from = "paperwork",
  { "36 and 36", expect = "pass" },
  { "a hair too near the bath door", with = { ["alarms.from_bath_door_in"] = 35.999 },
    expect = "fail", required = 36 },
  { "a hair too near a register", with = { ["alarms.from_register_in"] = 35.999 },
    expect = "fail", required = 36 },
  { "35 from the bath door", with = { ["alarms.from_bath_door_in"] = 35 }, expect = "fail",
    required = 36, found = 35 },
  { "30 from a register", with = { ["alarms.from_register_in"] = 30 }, expect = "fail",
    required = 36, found = 30 },
  { "bath door not told", without = { "alarms.from_bath_door_in" }, expect = "open" },
  { "register not told", without = { "alarms.from_register_in" }, expect = "open" },
}

cases "alarms.proof" {
  under = QUILLBANK, from = "paperwork",
  { "an affidavit", expect = "pass" },
  { "a signed form", with = { ["alarms.proof"] = "signed_form" }, expect = "pass" },
  { "an inspector saw them", with = { ["alarms.proof"] = "seen" }, expect = "pass" },
  { "nothing", with = { ["alarms.proof"] = "none" }, expect = "fail" },
  { "not told", without = { "alarms.proof" }, expect = "open" },
}

-- A California sheet: owner and contractor both sign.
cases "alarms.form_signers" {
  under = QUILLBANK, from = "paperwork",
  { "both", expect = "pass" },
  { "the owner alone", with = { ["alarms.form_signed_by"] = { "owner" } }, expect = "fail",
    says = "contractor" },
  { "the contractor alone", with = { ["alarms.form_signed_by"] = { "contractor" } },
    expect = "fail", says = "owner" },
  { "a form both signed", with = { ["alarms.proof"] = "signed_form" }, expect = "pass" },
  { "not told", without = { "alarms.form_signed_by" }, expect = "open" },
  { "an inspector saw them", with = { ["alarms.proof"] = "seen" }, expect = "not_applicable" },
}

-- A Colorado county: an affidavit on carbon monoxide alarms before the final.
cases "alarms.co_affidavit" {
  under = QUILLBANK, from = "paperwork",
  { "handed in", expect = "pass" },
  { "only a form", with = { ["alarms.proof"] = "signed_form" }, expect = "fail" },
  { "not told", without = { "alarms.proof" }, expect = "open" },
  { "the model code asks for none", under = "model/irc-2021", expect = "not_applicable" },
}

-- A Texas town: a look in the attic where there is gas.
cases "alarms.gas_vents" {
  under = QUILLBANK, from = "paperwork",
  { "they fit", expect = "pass" },
  { "one hangs loose", with = { ["house.gas_vents_fit"] = false }, expect = "fail" },
  { "not looked at", without = { "house.gas_vents_fit" }, expect = "open" },
  { "no gas", with = { ["house.co_sources"] = { "fireplace" } }, expect = "not_applicable" },
  { "fires not told", without = { "house.co_sources" }, expect = "open" },
  { "a list without any", with = { ["house.co_sources"] = {} }, expect = "open",
    says = "say none, or which" },
  { "the model code does not look", under = "model/irc-2021", expect = "not_applicable" },
}

-- Without the exemption, but with neither a permit nor a price named, nothing is due.
for _, id in ipairs { "alarms.smoke", "alarms.co", "alarms.listed", "alarms.power",
  "alarms.clearances", "alarms.proof", "alarms.form_signers" } do
  cases(id) {
    under = "example/hollowferry", from = "paperwork",
    { "nothing brings the duty there",
      with = { ["alarms.smoke_at"] = { "none" }, ["alarms.co_at"] = { "none" },
        ["alarms.listed"] = false, ["alarms.power"] = "battery", ["alarms.proof"] = "none",
        ["alarms.from_bath_door_in"] = 1 }, expect = "not_applicable" },
  }
end

-- What brings the duty does not bring every further demand with it.
for _, id in ipairs { "alarms.listed", "alarms.power", "alarms.clearances", "alarms.proof",
  "alarms.form_signers" } do
  cases(id) {
    under = "model/irc-2021", from = "paperwork",
    { "not asked for by the model code",
      with = { ["alarms.listed"] = false, ["alarms.power"] = "battery",
        ["alarms.proof"] = "none", ["alarms.from_bath_door_in"] = 1 },
      expect = "not_applicable" },
  }
end

-- Batteries where nothing inside is opened: R314.6, as a California sheet prints it. Fern
-- Hollow County and its town are invented; the town asks nothing of attics.
local function fed_by(power, opened, wired)
  return { ["alarms.power"] = power, ["scope.finish_opened"] = opened,
    ["house.wiring_access"] = wired, ["scope.skylights_changed"] = false }
end
cases "alarms.power" {
  under = "example/fernhollow", from = "paperwork",
  { "nothing opened, no way for wires", with = fed_by("battery", false, false),
    expect = "pass" },
  { "nothing opened, wired all the same", with = fed_by("wired", false, false),
    expect = "pass" },
  { "nothing opened, sealed", with = fed_by("sealed_battery", false, false), expect = "pass" },
  { "a ceiling taken down", with = fed_by("battery", true, false), expect = "fail" },
  { "an attic lets wires through", with = fed_by("battery", false, true), expect = "fail" },
  { "an attic, in the town", under = "example/mosslane", with = fed_by("battery", false, true),
    expect = "pass" },
  { "whether an attic does, not told", with = fed_by("battery", false), expect = "open" },
  { "what is opened, not told", with = fed_by("battery"), expect = "open" },
  { "a county that makes no difference", under = QUILLBANK,
    with = fed_by("battery", false, false), expect = "fail" },
}

-- R315.3: outside the bedrooms, and in one that burns fuel; not on each story, which is one
-- state's wording. The model code lets roofing off, so a place without that line shows it.
cases "alarms.co" {
  under = "example/fernhollow", from = "paperwork",
  { "outside the bedrooms alone", with = { ["scope.skylights_changed"] = false,
    ["house.co_sources"] = { "fuel_appliance" }, ["alarms.co_at"] = { "outside_bedrooms" } },
    expect = "pass" },
  { "on each story, but not there", with = { ["house.co_sources"] = { "fuel_appliance" },
    ["alarms.co_at"] = { "each_story" } }, expect = "fail", says = "outside bedrooms" },
}
