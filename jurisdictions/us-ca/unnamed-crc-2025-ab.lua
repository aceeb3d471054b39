-- A California city that the page's excerpt does not name: on the 2025 book, only
-- classes A and B are known, B the floor.

jurisdiction "us-ca/unnamed-crc-2025-ab" {
  title = "A California city, not named on the page read",
  follows = "us-ca",
  from = "2026-01-01",
  code = "City code on CRC 2025",
  edition = "CRC 2025 as amended",
  as_seen = "2026-11-25",
  figures = {
    ["fire.class_required"] = { true, cite = "local R902.1", status = "seen",
      source = "the city's code" },
    ["fire.classes"] = { { "A", "B" }, cite = "local R902.1", status = "seen",
      source = "the city's code" },
  },
}
