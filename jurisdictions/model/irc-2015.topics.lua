-- IRC 2015: fire, flashing, valleys and wood where their standing differs.

figures {
  ["fire.pv_class_required"] = { cite = "R902.3, R902.4", status = "parallel",
    source = "a state residential code on the 2018 edition" },
  ["flashing.sidewall_methods"] = { cite = "R905.2.8.3",
    status = "seen", source = "page of this edition in a permit file" },
  ["flashing.cricket_skylight_exempt"] = { cite = "R903.2.2 exc.", status = "memory",
    source = "recalled; read in the 2018 edition" },
}
