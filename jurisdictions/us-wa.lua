-- Washington: the 2021 Residential Code (WAC 51-51), after two delays (from
-- 1 July 2023, then from 29 October 2023). No roof figure of the state's own
-- was found; cities free some overlays from the permit.

jurisdiction "us-wa" {
  title = "Washington",
  follows = "model/irc-2021",
  from = "2024-03-15",
  code = "WAC 51-51",
  edition = "Washington Residential Code 2021 (on IRC 2021)",
  as_seen = "2026-11-25",
}
