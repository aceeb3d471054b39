-- tamarack.rules.lua - Tamarack County's own duty, invented: pictures of the
-- nailed deck, taken before it is covered.

field "decks[].pictures_before_cover" { type = "yes_no", stage = "permit",
  ask = "Will pictures of this deck, nailed, be taken before it is covered?" }

demand "deck.pictures" {
  title = "Pictures of the nailed deck",
  stage = "deck",
  per = "decks",
  when = {
    no { is { "scope.method", "overlay" }, otherwise = "an overlay opens no deck" },
    on { "deck.pictures_required", otherwise = "no pictures are asked for here" },
  },
  fact = "decks[].pictures_before_cover", meets = "deck.pictures_required",
  mend = "Take a picture of each plane with a tape measure in it before the underlayment.",
}
