-- stops: error "only while a rule judges"
-- when: load
-- Whether the stage is reached depends on the job.

inspecting()
