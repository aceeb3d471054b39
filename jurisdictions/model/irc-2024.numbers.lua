-- IRC 2024: sections that got another number, their figures as before.

local TEXT = "state code text on this edition"

-- Restates the citations of figures whose values stay.
local function at(cite, ...)
  local found = {}
  for _, name in ipairs { ... } do
    found[name] = { cite = cite, status = "seen", source = TEXT }
  end
  figures(found)
end

at("R908.4", "layers.overlay_allowed", "layers.overlay_needs_maker",
  "layers.hail_bars_overlay")
at("R908.4 exceptions", "layers.bases_allowed", "layers.not_over",
  "layers.over_wood_shake_allowed", "layers.most", "layers.peeled_counts")
at("R908.4.1", "layers.wood_hollow_needs_cover")

at("R310.2.2 exc. 1, R311.2.2 exc. 1", "alarms.exterior_exempt")
at("R310.2.2", "alarms.by_price", "alarms.proof_counts", "alarms.form_signers_count")
at("R311.2.2", "alarms.co_by_price", "alarms.co_affidavit_required")
at("R311.2", "alarms.co_sources")
at("R311.3", "alarms.co_places", "alarms.co_bedroom_places")
at("R310.3", "alarms.clearances_count")
at("R310.6", "alarms.power_counts")
at("R308.1", "inspection.address_counts")

at("R905.7.6", "wood.exposure_limited")
at("Table R905.7.6(1)", "wood.exposure_low_below")
for _, length in ipairs { "16", "18", "24" } do
  for _, band in ipairs { "low", "steep" } do
    for grade = 1, 3 do
      at("Table R905.7.6(1)", "wood.exposure_most." .. band .. "." .. length .. ".No" .. grade)
    end
  end
end
