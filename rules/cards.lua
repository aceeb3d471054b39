-- cards.lua - what the card of each stage shows, in the order in which an
-- inspector walks it, and what stands at the head of cards and reports.
--
-- A part lists rules ("deck.sound", of any stage) and topics ("deck": the rest
-- of that topic at this stage). A rule stands where it is named first, by
-- itself before by its topic; what no part names comes last, under a heading of
-- its own. The order is common practice, drawn from handouts on reroof
-- inspections.

-- Numbers come first; who calls, what is posted and the way up come last.

card "permit" {
  { title = "The old roof", "layers", "wood" },
  { title = "Deck and slope", "slope", "deck" },
  { title = "Underlayment, edges, flashing and valleys",
    "underlayment", "ice_barrier", "drip_edge", "flashing", "valley" },
  { title = "Covering and its nails", "shingle", "fasteners", "wind", "fire", "energy" },
  { title = "Attic air", "ventilation" },
  { title = "Permit, papers and visits", "papers", "permit", "inspection.notice",
    "inspection.caller", "inspection.holder_calls", "inspection.someone_there", "inspection" },
}

card "deck" {
  { title = "The bare deck", "inspection.pre_passed", "inspection.pre_hidden",
    "inspection.deck_hidden", "deck.sound", "deck.solid", "deck.panel_thickness",
    "deck.panel_span", "deck.panel_gap", "deck.board_thickness", "deck.board_gap", "wood" },
  { title = "Nails in the deck", "deck.nail_kind", "deck.nail_length", "deck.nail_shank",
    "deck.nail_edges", "deck.nail_field", "wind.nail_spacing", "deck.nail_gable",
    "deck.nail_band", "deck.nail_band_width", "deck.nail_edge_distance",
    "deck.nail_closest", "deck.nails_driven", "deck.board_nails", "deck" },
  { title = "What the open roof shows", "inspection.ties", "energy", "wind" },
  { title = "The visit: way up, papers, who calls", "inspection.access",
    "inspection.ladder_tied", "inspection.ladder_past", "inspection.ladder_rating",
    "inspection.snow", "permit.posted", "permit.visible", "permit.life",
    "papers.commencement_posted", "papers.on_site_deck", "papers.photos_deck", "permit",
    "papers", "inspection.deck", "inspection.notice", "inspection.caller",
    "inspection.holder_calls", "inspection.someone_there", "inspection" },
}

card "dry-in" {
  { title = "Before the dry-in", "inspection.deck_passed", "inspection.dry_in_hidden",
    "underlayment.old_left" },
  { title = "Eaves and rakes", "drip_edge.eave", "drip_edge.rake", "drip_edge.order_eave",
    "drip_edge.order_rake", "drip_edge", "ice_barrier.kind", "ice_barrier.reach", "ice_barrier" },
  { title = "Underlayment", "underlayment.kind", "underlayment.plies",
    "slope.double_underlayment", "underlayment.starter", "underlayment.head_lap",
    "underlayment.end_lap", "underlayment.end_lap_offset", "underlayment.fasteners",
    "underlayment.cap", "underlayment.lap_spacing", "underlayment.field_spacing",
    "underlayment.sealed_deck", "underlayment" },
  { title = "Valleys", "valley", "fire.valley_underlay" },
  { title = "Walls, chimneys and pipes", "flashing" },
  { title = "Fire", "fire" },
  { title = "The mid-roof look", "inspection.mid_roof_moment", "inspection.mid_roof_courses",
    "inspection.mid_roof_share", "inspection.mid_roof_hidden" },
  { title = "The visit: way up, papers, who calls", "inspection.access",
    "inspection.ladder_tied", "permit.posted", "permit.visible", "papers.on_site_dry_in",
    "papers.photos_dry_in", "inspection.labels", "papers", "permit", "inspection.dry_in",
    "inspection.mid_roof", "inspection.notice", "inspection.caller",
    "inspection.holder_calls", "inspection.someone_there", "inspection" },
}

card "final" {
  { title = "Covering and its nails", "inspection.dry_in_passed", "inspection.mid_roof_passed",
    "shingle.exposure", "shingle.offset", "shingle.offset_usual", "fasteners.count",
    "fasteners.driven", "shingle", "fasteners" },
  { title = "Flashing, valleys and edges", "flashing", "valley", "wood", "fire" },
  { title = "Vents, chimneys and panels", "ventilation.net_free_area", "ventilation.intake",
    "inspection.spark_arrester", "inspection.spark_arrester_openings", "inspection.solar",
    "ventilation" },
  { title = "Inside the house", "alarms" },
  { title = "From the street", "inspection.address", "inspection.address_size",
    "inspection.site_clean", "inspection.bin_gone", "inspection.downspouts" },
  { title = "The visit: way up, papers, who calls", "inspection.access",
    "inspection.ladder_tied", "permit.posted", "papers.on_site_final", "papers.wrapper",
    "shingle.instructions", "papers", "permit", "inspection.final", "inspection.final_passed",
    "inspection.notice", "inspection.caller", "inspection.holder_calls",
    "inspection.someone_there", "inspection" },
}

-- About the house ------------------------------------------------------------------

local KINDS = { one_family = "one-family", two_family = "two-family",
  townhouse = "townhouse" }

about "Address" { says = function(job) return job.site.address end }
about "Permit" { says = function(job) return job.permit.number end }
about "Call" { says = function(job) return job.permit.telephone end }

about "House" {
  says = function(job)
    local stories = job.house.stories
    return KINDS[job.house.kind] .. ", " .. stories
      .. (stories == 1 and " story" or " stories") .. ", built "
      .. string.format("%d", job.house.year_built)
  end,
}

local function gets_what(slope)
  if slope.gets == "old_stays" then return "keeps its old covering" end
  return "gets " .. in_words(slope.gets)
end

-- Where planes differ: what is said of each, and which are taken for the job's covering only
-- because nothing else is said of them.
about "Planes" {
  says = function(job)
    if not planes_differ(job) then return nil end
    local told, taken = {}, {}
    for i, slope in ipairs(job.roof.slopes) do
      local name = name_of(slope, "plane " .. i)
      if not known(slope, "gets") then
        table.insert(taken, name)
      elseif not gets_covering(slope) then
        table.insert(told, name .. " " .. gets_what(slope))
      end
    end
    if #taken > 0 then
      table.insert(told, "taken for the job's covering, nothing else being said: "
        .. table.concat(taken, ", "))
    end
    return table.concat(told, "; ")
  end,
}

-- What was asked back and called meant, for whoever looks at the job again.
about "Meant" {
  says = function(job)
    local places = {}
    for _, one in ipairs(job.as_meant) do table.insert(places, one.at) end
    return table.concat(places, "; ")
  end,
}

about "Work" {
  says = function(job)
    local planes = {}
    for _, slope in ipairs(job.roof.slopes) do
      table.insert(planes, slope.name .. " " .. string.format("%g", slope.pitch) .. ":12")
    end
    return job.scope.method .. ", " .. #job.decks .. (#job.decks == 1 and " deck: " or " decks: ")
      .. table.concat(planes, "; ")
  end,
}
