-- tamarack.rules.lua - Tamarack County's own duty, invented: pictures of the
-- nailed deck, taken before it is covered.

field "decks[].pictures_before_cover" { type = "yes_no", stage = "permit",
  ask = "Will pictures of this deck, nailed, be taken before it is covered?" }

rule "deck.pictures" {
  title = "Pictures of the nailed deck",
  stage = "deck",
  per = "decks",
  applies = function(job, figure)
    if job.scope.method == "overlay" then return false, "an overlay opens no deck" end
    return figure "deck.pictures_required", "no pictures are asked for here"
  end,
  judge = function(job, figure, deck)
    return equals(deck.pictures_before_cover, figure "deck.pictures_required")
  end,
  mend = "Take a picture of each plane with a tape measure in it before the underlayment.",
}
