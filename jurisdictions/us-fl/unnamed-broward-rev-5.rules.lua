-- unnamed-broward-rev-5.rules.lua - the whole county lies in the high-velocity zone
-- (FBC-B 202), so a job that puts the house outside it has the place or the fact wrong.

impossible "a house in the county lies in the high-velocity hurricane zone" {
  at = "site.high_velocity_hurricane_zone",
  when = function(job)
    if not job.site.high_velocity_hurricane_zone then
      return "all of Broward County lies in the high-velocity hurricane zone: this is true, "
        .. "or the house is not in the county"
    end
  end,
}
