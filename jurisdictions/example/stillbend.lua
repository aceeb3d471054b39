-- Stillbend, invented: a town on the river below the bluffs of Quillbank County,
-- in the invented state of Harrow. It puts some figures on the other side: a
-- share or size exactly at the figure is inside, a permit is needed from a share
-- or a size, whichever is less, and mid-roof means so many courses up.

jurisdiction "example/stillbend" {
  title = "Town of Stillbend, Harrow",
  invented = true,
  follows = "example/quillbank",
  from = "2025-07-01",
  code = "Stillbend Town Ordinances",
  figures = {
    -- The less of 10 percent and two squares: either is enough.
    ["permit.share_limit"] = { 10, cite = "ch. 9 s. 2" },
    ["permit.area_limit"] = { 200, cite = "ch. 9 s. 2" },
    ["permit.area_at_counts"] = { true, cite = "ch. 9 s. 2" },
    ["permit.share_at_counts"] = { true, cite = "ch. 9 s. 2" },
    ["permit.deck_share_at_counts"] = { false, cite = "ch. 9 s. 3" },
    ["permit.price_at_counts"] = { true, cite = "ch. 9 s. 4" },
    ["permit.overlay_counts"] = { true, cite = "ch. 9 s. 5" },
    ["permit.tear_off_counts"] = { false, cite = "ch. 9 s. 5" },

    -- From 50 percent, not over it, the rest must follow.
    ["permit.rest_limit"] = { 50, cite = "ch. 9 s. 6" },
    ["permit.rest_at_counts"] = { true, cite = "ch. 9 s. 6" },
    ["permit.rest_relief"] = { false, cite = "ch. 9 s. 6" },

    ["papers.commencement_at_price_counts"] = { true, cite = "ch. 9 s. 8" },
    ["papers.planning_required"] = { true, cite = "ch. 9 s. 8" },
    ["papers.photos_always"] = { true, cite = "ch. 9 s. 9" },
    ["papers.affidavit_by_age"] = { false, cite = "ch. 9 s. 9" },
    ["papers.affidavit_unseen_only"] = { false, cite = "ch. 9 s. 9" },

    ["inspection.mid_roof_moments"] = { { "courses_laid" }, instead = true, cite = "ch. 9 s. 10" },
    ["inspection.mid_roof_courses_count"] = { true, cite = "ch. 9 s. 10" },
    ["inspection.mid_roof_share_counts"] = { false, cite = "ch. 9 s. 10" },
    ["inspection.required.pre"] = { false, cite = "ch. 9 s. 10" },
    ["inspection.no_cover"] = { false, cite = "ch. 9 s. 11" },

    ["alarms.by_permit"] = { true, cite = "ch. 9 s. 12" },
    ["alarms.at_price_counts"] = { true, cite = "ch. 9 s. 12" },
  },
}
