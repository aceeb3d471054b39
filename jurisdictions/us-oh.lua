-- Ohio: the Residential Code of Ohio 2019, on IRC 2018, as amended.
--
-- Its text was read as it stood in January 2026 (chapters 1, 8 and 9). It covers one-,
-- two- and three-family houses; a job here cannot say three. On which day each
-- amendment came was not read: until 2024 they are taken from that text. Towns may
-- differ (one asks for vents by 1/250).

local SENT = "905.2.8.5 sends to 903.1 and 905.1: the maker's instructions say what metal edge "
  .. "there is, and how"

local function edition(from, to, status, source, unsure)
  local function read(value, cite, more)
    local figure = more or {}
    figure[1], figure.cite, figure.status, figure.source = value, cite, status, source
    return figure
  end
  jurisdiction "us-oh" {
    title = "Ohio",
    follows = "model/irc-2018",
    unsure = unsure,
    from = from,
    to = to,
    code = "RCO 2019",
    edition = "Residential Code of Ohio 2019 (on IRC 2018)",
    as_seen = "2026-11-28",
    figures = {
      ["drip_edge.eave_required"] = read(false, "905.2.8.5"),
      ["drip_edge.rake_required"] = read(false, "905.2.8.5"),
      -- 24 in along the slope, from the outer face of the wall.
      ["ice_barrier.wall_counts"] = read(false, "905.1.2"),
      ["ice_barrier.inside_along_slope"] = read(true, "905.1.2"),
      ["ice_barrier.unheated_at_wall_exempt"] = read(true, "905.1.2 exception"),
      ["ventilation.retarder_zones"] = read({}, "806.2 exception"),
      ["wood.spaced_deck_barred_in"] = read({}, "803.1"),
      -- Six months' delay at most; those from February to August have 181 days.
      ["permit.life_days"] = read(181, "105.4"),
    },
    drop = {
      ["drip_edge.lap"] = SENT,
      ["drip_edge.down"] = SENT,
      ["drip_edge.back"] = SENT,
      ["drip_edge.fastener_spacing"] = SENT,
      ["drip_edge.order_eave"] = SENT,
      ["drip_edge.order_rake"] = SENT,
    },
  }
end

edition("2019-07-01", "2024-01-01", "parallel", "the state's code text of January 2026",
  "on which day the state's own lines came was not read: they are those of January 2026")
edition("2024-01-01", nil, "seen", "state code text on this edition")
