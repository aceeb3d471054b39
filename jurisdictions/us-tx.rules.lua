-- us-tx.rules.lua - which of the state's two books the house goes by. The
-- windstorm profile has the same question, turned round.

field "site.windstorm_certificate" { type = "yes_no", stage = "permit",
  ask = "Is the house in the designated windstorm area, and is it to have the pool's wind cover?" }

demand "papers.windstorm_book" {
  title = "The book that the house goes by",
  stage = "permit",
  fact = "site.windstorm_certificate", meets = "papers.windstorm_book_here",
  say = "A house that is to have the certificate goes by the windstorm rule, others do not.",
  mend = "Check the job under the other of the two profiles.",
}
