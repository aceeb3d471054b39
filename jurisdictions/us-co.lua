-- Colorado: no state residential code. Each city and county adopts its own
-- edition (2009 to 2021 were met), and they differ: one layer or two, a look at
-- mid-roof, ice barrier or not. So nothing is judged here; a city's profile
-- follows the model edition that it adopted, not this one.

jurisdiction "us-co" {
  title = "Colorado",
  follows = "model/irc-2021",
  borrowed = "Colorado has no state residential code: the city's or county's own edition binds",
  edition = "no state code: the city's or county's own edition",
  as_seen = "2026-11-25",
}
