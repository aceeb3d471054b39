-- Alarms: the model code brings existing houses up to date when a permit is taken out, and
-- lets work on the outside off, roofing named. A place that does not print that exemption
-- says so, and says whether any permit counts or only work over a price. What is asked of
-- alarms that are due is read in sheets of California departments, which print the same
-- sections.

-- What was read: code texts of states that took the editions over, not the printed books. In
-- an edition that was not read such a figure counts as parallel.
local TEXTS = "state code texts on the editions of 2015 to 2024"
local NO_LINE = TEXTS .. ": no such line"
local EDITION = "state code text on this edition"
local BOOKS = { "IRC 2015", "IRC 2018", "IRC 2021", "IRC 2024" }

figure "alarms.exterior_exempt" { true, "R314.2.2 exc. 1, R315.2.2 exc. 1", sense = "equals",
  seen = TEXTS, read_in = BOOKS, stricter = false,
  ["2024"] = { cite = "R310.2.2 exc. 1, R311.2.2 exc. 1", seen = EDITION },
}

-- Without the exemption, any permit counts.
figure "alarms.by_permit" { true, "R314.2.2", sense = "equals",
  seen = "a California city's alarm sheet printing R314.2.2", stricter = true }

figure "alarms.co_by_permit" { true, "R315.2.2", sense = "equals",
  seen = "a California city's alarm sheet printing R315.2.2", stricter = true }

figure "alarms.by_price" { false, "R314.2.2", sense = "equals", seen = NO_LINE, read_in = BOOKS,
  stricter = true,
  ["2024"] = { cite = "R310.2.2", seen = EDITION },
}

figure "alarms.co_by_price" { false, "R315.2.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true,
  ["2024"] = { cite = "R311.2.2", seen = EDITION },
}

figure "alarms.price_limit" { 1000, "R314.2.2", unit = "usd", sense = "over",
  seen = "a California statute and alarm sheets: over 1,000",
  at_figure = "alarms.at_price_counts" }

figure "alarms.at_price_counts" { false, "R314.2.2", sense = "equals",
  seen = "the same statute: over 1,000", stricter = true }
figure "alarms.smoke_places" { { "each_bedroom", "outside_bedrooms", "each_story" }, "R314.3",
  sense = "all_of", seen = "two California alarm sheets" }

-- What burns fuel, and an attached garage that opens into the house.
figure "alarms.co_sources" { { "fuel_appliance", "bedroom_appliance", "attached_garage" },
  "R315.2", sense = "one_of", seen = TEXTS, read_in = BOOKS,
  ["2024"] = { cite = "R311.2", seen = EDITION },
}

-- Beside those, in a bedroom that holds what burns fuel.
figure "alarms.co_bedroom_places" { { "fuel_bedroom" }, "R315.3", sense = "one_of", seen = TEXTS,
  read_in = BOOKS,
  ["2024"] = { cite = "R311.3", seen = EDITION },
}

figure "alarms.co_places" { { "outside_bedrooms" }, "R315.3", sense = "all_of", seen = TEXTS,
  read_in = BOOKS,
  ["2024"] = { cite = "R311.3", seen = EDITION },
}

figure "alarms.listed_required" { false, "R314.1.1", sense = "equals",
  seen = "state code texts on the editions of 2015 to 2024: asked of alarms that are due; off "
    .. "while roofing is let off", read_in = BOOKS, stricter = true }

figure "alarms.power_counts" { false, "R314.6", sense = "equals",
  seen = "state code texts on the editions of 2015 to 2024: asked of alarms that are due; off "
    .. "while roofing is let off", read_in = BOOKS, stricter = true,
  ["2024"] = { cite = "R310.6", seen = EDITION },
}

figure "alarms.powers" { { "wired", "sealed_battery" }, "R314.6", sense = "one_of",
  seen = "a California city's sheet: sealed ten-year batteries since 1 July 2014",
  behind = "alarms.power_counts" }

figure "alarms.closed_differs" { false, "R314.6 exc.", sense = "equals",
  seen = "state code texts on the editions of 2015 to 2024: batteries where no finish comes "
    .. "down and no attic lets wires through; off until a place says so", read_in = BOOKS,
  stricter = false }

figure "alarms.wiring_access_counts" { true, "R314.6 exc.", sense = "equals",
  seen = "a California city's sheet printing R314.6", stricter = true }

figure "alarms.powers_closed" { { "wired", "sealed_battery", "battery" }, "R314.6 exc.",
  sense = "one_of", seen = "a California city's sheet printing R314.6",
  behind = "alarms.closed_differs" }

figure "alarms.clearances_count" { false, "R314.3 item 4", sense = "equals",
  seen = "state code texts on the editions of 2015 to 2024: asked of alarms that are due; off "
    .. "while roofing is let off", read_in = BOOKS, stricter = true,
  ["2024"] = { cite = "R310.3", seen = EDITION },
}

figure "alarms.bath_door_least" { 36, "R314.3", unit = "in", sense = "at_least",
  seen = "a California city's sheet: 3 ft" }
figure "alarms.register_least" { 36, "R314.3", unit = "in", sense = "at_least",
  seen = "a California city's sheet: 36 in from registers and fan blades" }

figure "alarms.proof_counts" { false, "R314.2.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true,
  ["2024"] = { cite = "R310.2.2", seen = EDITION },
}

figure "alarms.proofs" { { "seen", "signed_form", "affidavit" }, "R314.2.2", sense = "one_of",
  seen = "California self-certification sheets for permits without a look inside",
  behind = "alarms.proof_counts" }

figure "alarms.form_signers_count" { false, "R314.2.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true,
  ["2024"] = { cite = "R310.2.2", seen = EDITION },
}

figure "alarms.form_signers" { { "owner", "contractor" }, "R314.2.2", sense = "all_of",
  seen = "a California sheet that both sign; another has owner and tenant" }

figure "alarms.co_affidavit_required" { false, "R315.2.2", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true,
  ["2024"] = { cite = "R311.2.2", seen = EDITION },
}

figure "alarms.gas_vents_count" { false, "R109.1.6", sense = "equals", seen = NO_LINE,
  read_in = BOOKS, stricter = true }
figure "alarms.co_not_read" { false, "R315.2", sense = "equals", seen = TEXTS, read_in = BOOKS,
  stricter = true }
figure "alarms.co_in_every_house" { false, "R315.2", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = true }
figure "alarms.co_owner_exempt" { false, "R315.2.2", sense = "equals", seen = TEXTS,
  read_in = BOOKS, stricter = false }
figure "alarms.co_by_sources" { true, "R315.2", sense = "equals", seen = TEXTS, read_in = BOOKS,
  stricter = false }
figure "alarms.cooking_counts" { false, "R314.3", sense = "equals", seen = TEXTS, read_in = BOOKS,
  stricter = true }
