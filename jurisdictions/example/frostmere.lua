-- Frostmere County, invented: a cold place, and the one in which the rule cases
-- try duties that the model code leaves off. Until mid-2026 its ice barrier
-- reads like the model's; from then on it lets unheated eaves off and counts
-- from the outer face of the wall.

jurisdiction "example/frostmere" {
  title = "Frostmere County",
  invented = true,
  code = "Frostmere County Code",
  follows = "model/irc-2021",
  from = "2024-01-01",
  to = "2026-07-01",
  figures = {
    ["ice_barrier.required"] = { true, cite = "9.20.010" },
    ["layers.hail_bars_overlay"] = { true, cite = "9.20.030" },
    ["layers.over_wood_shake_allowed"] = { false, cite = "9.20.032" },
  },
}

jurisdiction "example/frostmere" {
  title = "Frostmere County",
  invented = true,
  code = "Frostmere County Code",
  follows = "model/irc-2021",
  from = "2026-07-01",
  figures = {
    ["ice_barrier.required"] = { true, cite = "9.20.010" },
    ["ice_barrier.unheated_exempt"] = { true, cite = "9.20.012" },
    ["ice_barrier.wall_counts"] = { false, cite = "9.20.014" },
    ["ice_barrier.on_overlay_required"] = { false, cite = "9.20.016" },
    ["layers.hail_bars_overlay"] = { true, cite = "9.20.030" },
    ["layers.over_wood_shake_allowed"] = { false, cite = "9.20.032" },
  },
}
