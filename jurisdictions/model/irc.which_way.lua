-- Which way each yes or no of the model's figures goes, and which figures bind nobody until
-- a switch is on: what `eavemark proof` says of a place's differences. A figure may say the
-- same of itself: stricter = true, behind = "permit.area_counts".

-- Yes asks for more.
stricter {
  "alarms.at_price_counts", "alarms.by_permit", "alarms.by_price", "alarms.clearances_count",
  "alarms.co_affidavit_required", "alarms.co_by_permit", "alarms.co_by_price",
  "alarms.co_in_every_house", "alarms.co_not_read", "alarms.cooking_counts",
  "alarms.form_signers_count", "alarms.gas_vents_count", "alarms.listed_required",
  "alarms.power_counts", "alarms.proof_counts", "alarms.wiring_access_counts",
  "deck.kept_held_to_tables", "deck.nail_close_at_named_speed", "deck.nail_gravity_counts",
  "deck.nail_wind_by_map", "deck.nails_by_wind", "deck.panel_edges_hidden_required",
  "deck.panel_joints_count", "deck.panels_by_wind", "deck.renail_by_old_nails",
  "deck.renail_required", "deck.solid_counts_for_all", "deck.thickness_counts",
  "drip_edge.cement_required", "drip_edge.close_fastening", "drip_edge.eave_required",
  "drip_edge.not_read", "drip_edge.on_overlay_required", "drip_edge.rake_required",
  "energy.cool_roof_required", "energy.low_deck_R_required", "energy.no_ducts_by_zone",
  "energy.opened_R_required", "energy.radiant_barrier_not_on_spaced",
  "energy.trigger_at_named_share",
  "fasteners.hurricane_zone_counts",
  "fire.ban_by_local_zone", "fire.class_at_named_share", "fire.class_by_addition",
  "fire.class_by_material", "fire.class_by_share", "fire.class_by_zone", "fire.class_required",
  "fire.ends_stopped_required", "fire.gutter_guard_required", "fire.match_old_adds_up",
  "fire.match_old_by_zone", "fire.proof_required", "fire.pv_class_required",
  "fire.state_area_counts", "fire.whole_roof_at_named_share", "fire.whole_roof_required",
  "fire.wildfire_details", "fire.wood_labels_required", "fire.wood_treated_required",
  "fire.wood_weathering_required",
  "flashing.cricket_by_table", "flashing.cricket_counterflashed", "flashing.cricket_required",
  "flashing.kickout_required", "flashing.masonry_counterflashed", "flashing.required",
  "flashing.step_has_size",
  "ice_barrier.by_history", "ice_barrier.by_january_mean", "ice_barrier.by_table",
  "ice_barrier.on_overlay_required", "ice_barrier.rakes_required", "ice_barrier.required",
  "ice_barrier.steep_applies", "ice_barrier.strip_required", "ice_barrier.valleys_required",
  "ice_barrier.wall_counts",
  "inspection.access_required", "inspection.address_counts", "inspection.as_permitted_counts",
  "inspection.bin_gone_required", "inspection.clean_required", "inspection.deck_loaded_counts",
  "inspection.deputy_required", "inspection.downspouts_count", "inspection.in_order",
  "inspection.labels_required", "inspection.ladder_past_counts",
  "inspection.ladder_rating_counts", "inspection.ladder_tied_required",
  "inspection.mid_roof_battens_count", "inspection.mid_roof_courses_count",
  "inspection.mid_roof_share_counts", "inspection.no_cover", "inspection.notice_required",
  "inspection.only_holder_calls", "inspection.owner_differs", "inspection.pre_flat_counts",
  "inspection.ready_counts", "inspection.required.deck", "inspection.required.dry_in",
  "inspection.required.final", "inspection.required.mid_roof", "inspection.required.nailing",
  "inspection.required.pre", "inspection.snow_free_required", "inspection.solar_counts",
  "inspection.solar_electrician_required", "inspection.someone_required",
  "inspection.spark_arrester_openings_count", "inspection.spark_arrester_required",
  "inspection.tall_counts", "inspection.ties_count",
  "layers.hail_bars_overlay", "layers.overlay_needs_maker", "layers.peeled_counts",
  "layers.tear_off_to_deck", "layers.wood_hollow_needs_cover",
  "papers.affidavit_filed_required", "papers.affidavit_notarized_required",
  "papers.affidavit_on_site_required", "papers.affidavit_required",
  "papers.approval_marks_count", "papers.approval_numbers_required",
  "papers.approval_sheets_required", "papers.asbestos_test_required",
  "papers.association_letter_required", "papers.association_notice_required",
  "papers.commencement_at_price_counts", "papers.commencement_posted_required",
  "papers.commencement_required", "papers.contract_required",
  "papers.double_deck_needs_engineer", "papers.engineer_counts", "papers.historic_required",
  "papers.lead_firm_required", "papers.liability_counts", "papers.maker_specification_required",
  "papers.packets_count", "papers.photos_always", "papers.photos_clear_required",
  "papers.photos_tied_required", "papers.planning_on_change", "papers.planning_required",
  "papers.plans_for_pitch_required", "papers.site_measures_required", "papers.sketch_required",
  "papers.underlayment_stated_required", "papers.value_counts", "papers.waste_deposit_counts",
  "papers.waste_plan_required", "papers.waste_share_counts", "papers.workers_comp_required",
  "papers.wrapper_required",
  "permit.area_at_counts", "permit.area_counts", "permit.bin_deposit_required",
  "permit.bin_required", "permit.certificate_required", "permit.deck_any_counts",
  "permit.deck_share_at_counts", "permit.deck_share_counts", "permit.every",
  "permit.grade_counts", "permit.heavy_at_counts", "permit.heavy_counts",
  "permit.historic_counts", "permit.joins_count", "permit.late_fee_counts",
  "permit.license_required", "permit.life_counts", "permit.life_is_local",
  "permit.lifetime_required", "permit.load_share_counts", "permit.local_list_counts",
  "permit.material_change_counts", "permit.open_counts", "permit.overdue_bars",
  "permit.overlay_counts", "permit.owner_must_live_there", "permit.owner_statement_required",
  "permit.part_as_new_at_counts", "permit.part_as_new_counts", "permit.pitch_change_counts",
  "permit.plane_share_at_counts", "permit.plane_share_counts", "permit.posted_required",
  "permit.price_at_counts", "permit.price_counts", "permit.registration_required",
  "permit.rest_at_counts", "permit.rest_by_section", "permit.rest_counts",
  "permit.right_of_way_clear_required", "permit.right_of_way_required",
  "permit.share_at_counts", "permit.share_counts", "permit.skylight_counts",
  "permit.small_counts", "permit.solar_roof_counts", "permit.spaced_deck_counts",
  "permit.stories_counts", "permit.structure_counts", "permit.tear_off_counts",
  "permit.underlayment_counts", "permit.units_counts", "permit.violations_bar",
  "permit.visible_required", "permit.warranty_counts", "permit.weight_added_counts",
  "permit.weight_rise_at_counts", "permit.weight_rise_counts", "permit.whole_planes_required",
  "permit.wildfire_zone_counts",
  "shingle.follow_instructions", "shingle.hail_label_required", "shingle.instructions_required",
  "shingle.weight_counts", "shingle.wind_label_required",
  "flashing.primed_counts", "flashing.rusted_metal_counts", "papers.asbestos_notice_required",
  "slope.other_checked_required",
  "underlayment.any_wind_counts", "underlayment.double_lap_by_roll",
  "underlayment.metal_caps_count", "underlayment.mid_wind_applies",
  "underlayment.old_needs_nails_shown", "underlayment.on_overlay_required",
  "underlayment.sealed_deck_required", "underlayment.tape_kinds_count",
  "underlayment.third_course_counts", "underlayment.wind_counts",
  "valley.lined_first", "valley.lining_required", "valley.on_overlay_required",
  "ventilation.fans_outdoors_required", "ventilation.on_overlay_required",
  "ventilation.outdoors_required", "ventilation.reduced_needs_both",
  "wind.engineered_nailing_binds", "wind.local_speed_on_vasd", "wind.local_zones_count",
  "wind.vult_counts",
  "wood.exposure_limited", "wood.match_required", "wood.primed_required",
  "wood.rot_replaced_required", "wood.solid_eaves_required", "wood.structure_required",
}

-- Yes lets off, or lets in, what no does not.
looser {
  "alarms.closed_differs", "alarms.co_by_sources", "alarms.co_owner_exempt",
  "alarms.exterior_exempt",
  "deck.overdriven_allowed", "deck.shear_listing_allowed", "deck.thickness_new_only",
  "deck.thickness_over_only",
  "drip_edge.close_wind_on_vasd", "drip_edge.primed_flange_allowed",
  "drip_edge.sealed_flange_allowed", "drip_edge.variance_allowed",
  "energy.exempt_air_space", "energy.exempt_ceiling_R", "energy.exempt_deck_R",
  "energy.exempt_integrated_pv", "energy.exempt_mass", "energy.exempt_no_ducts",
  "energy.exempt_profile", "energy.exempt_radiant_barrier", "energy.exempt_sealed_ducts",
  "energy.low_trade_for_insulation", "energy.steep_at_named_slope",
  "fasteners.overdriven_allowed",
  "fire.ban_one_family_only", "fire.historic_exceptions", "fire.vent_listing_accepted",
  "flashing.cricket_skylight_exempt", "flashing.reuse_allowed",
  "ice_barrier.inside_along_slope", "ice_barrier.one_family_exempt",
  "ice_barrier.strip_allowed", "ice_barrier.unheated_at_wall_exempt",
  "ice_barrier.unheated_exempt",
  "inspection.deck_only_new", "inspection.free_price_counts",
  "layers.over_wood_shake_allowed", "layers.overlay_allowed", "layers.overlay_by_listing",
  "papers.affidavit_by_age", "papers.affidavit_unseen_only", "papers.waste_overlay_exempt",
  "papers.without_employees_exempt",
  "permit.repair_exempt", "permit.rest_relief",
  "shingle.hail_early_exempt",
  "underlayment.tape_frees_kind", "underlayment.wind_on_vasd",
  "ventilation.with_new_deck_only",
}

-- Yes and no ask for different things, of which neither is more.
neither {
  "flashing.by_metal",
  "inspection.deck_loaded_wanted",
  "layers.flat_differs",
  "underlayment.wind_by_map", "underlayment.wind_by_region",
}

-- Limits, and words of lists, behind a switch.
behind "alarms.closed_differs" { "alarms.powers_closed" }
behind "alarms.power_counts" { "alarms.powers" }
behind "alarms.proof_counts" { "alarms.proofs" }
behind "deck.nail_gravity_counts" { "deck.nail_gravity_least" }
behind "deck.renail_required" { "deck.renail_built_before", "deck.renail_house_kinds" }
behind "deck.thickness_counts" {
  "deck.thickness_kinds", "deck.thickness_least", "deck.thickness_new_only",
  "deck.thickness_over_only",
}
behind "drip_edge.close_fastening" {
  "drip_edge.close_height_over", "drip_edge.close_spacing_most", "drip_edge.close_wind_from",
  "drip_edge.close_wind_on_vasd",
}
behind "energy.low_deck_R_required" {
  "energy.low_deck_R_existing_least", "energy.low_deck_R_least", "energy.low_deck_R_zones",
}
behind "energy.opened_R_required" { "energy.opened_R_least" }
behind "fire.class_by_addition" { "fire.class_addition_over" }
behind "fire.class_by_share" { "fire.class_at_named_share", "fire.class_share_over" }
behind "fire.class_required" { "fire.classes" }
behind "fire.state_area_counts" { "fire.state_area_exempt_zones" }
behind "fire.whole_roof_required" {
  "fire.whole_roof_at_named_share", "fire.whole_roof_months", "fire.whole_roof_over",
}
behind "fire.wood_weathering_required" { "fire.wood_weathering_years_least" }
behind "flashing.cricket_required" {
  "flashing.cricket_by_table", "flashing.cricket_counterflashed", "flashing.cricket_covers",
  "flashing.cricket_over", "flashing.cricket_skylight_exempt",
}
behind "ice_barrier.steep_applies" { "ice_barrier.steep_from", "ice_barrier.steep_reach_least" }
behind "ice_barrier.strip_required" { "ice_barrier.strip_allowed", "ice_barrier.strip_least" }
behind "inspection.access_required" { "inspection.accesses" }
behind "inspection.address_counts" {
  "inspection.address_height_least", "inspection.address_stroke_least",
}
behind "inspection.deck_loaded_counts" { "inspection.deck_loaded_wanted" }
behind "inspection.deputy_required" { "inspection.deputy_under" }
behind "inspection.free_price_counts" { "inspection.free_price_most" }
behind "inspection.ladder_past_counts" { "inspection.ladder_past_least" }
behind "inspection.ladder_rating_counts" { "inspection.ladder_rating_least" }
behind "inspection.mid_roof_share_counts" {
  "inspection.mid_roof_share_least", "inspection.mid_roof_share_most",
}
behind "inspection.notice_required" { "inspection.notice_hours_least" }
behind "inspection.pre_flat_counts" { "inspection.pre_flat_most" }
behind "inspection.solar_counts" {
  "inspection.solar_electrician_required", "inspection.solar_proofs",
}
behind "inspection.spark_arrester_required" {
  "inspection.spark_arrester_opening_least", "inspection.spark_arrester_opening_most",
  "inspection.spark_arrester_openings_count",
}
behind "inspection.tall_counts" { "inspection.accesses_tall", "inspection.tall_over" }
behind "papers.affidavit_required" {
  "papers.affidavit_built_most", "papers.affidavit_by_age", "papers.affidavit_covers",
  "papers.affidavit_filed_required", "papers.affidavit_notarized_required",
  "papers.affidavit_on_site_required", "papers.affidavit_signers", "papers.affidavit_unseen_only",
  "papers.affidavit_visits",
}
behind "papers.approval_marks_count" { "papers.approval_marks" }
behind "papers.approval_sheets_required" { "papers.approval_sheets_least" }
behind "papers.association_notice_required" { "papers.association_notice_days_least" }
behind "papers.commencement_required" {
  "papers.commencement_at_price_counts", "papers.commencement_posted_required",
  "papers.commencement_price_limit",
}
behind "papers.engineer_counts" { "papers.engineer_weight_limit" }
behind "papers.liability_counts" { "papers.liability_least" }
behind "papers.packets_count" { "papers.packets_least" }
behind "papers.planning_required" { "papers.planning_on_change" }
behind "papers.sketch_required" { "papers.sketch_copies_least" }
behind "papers.underlayment_stated_required" {
  "papers.underlayment_stated_built_most", "papers.underlayments_stated",
}
behind "papers.value_counts" {
  "papers.value_from", "papers.value_papers", "papers.value_papers_final",
}
behind "papers.waste_deposit_counts" { "papers.waste_deposit_least" }
behind "papers.waste_share_counts" { "papers.waste_share_least", "papers.waste_share_price_from" }
behind "papers.workers_comp_required" { "papers.workers_comp_proofs" }
behind "permit.area_counts" { "permit.area_at_counts", "permit.area_limit" }
behind "permit.bin_required" { "permit.bin_deposit_required" }
behind "permit.deck_any_counts" { "permit.deck_any_free" }
behind "permit.deck_share_counts" { "permit.deck_share_at_counts", "permit.deck_share_limit" }
behind "permit.grade_counts" { "permit.grades" }
behind "permit.heavy_counts" { "permit.heavy_at_counts", "permit.heavy_limit" }
behind "permit.license_required" { "permit.licenses" }
behind "permit.life_counts" { "permit.life_days", "permit.life_is_local" }
behind "permit.load_share_counts" { "permit.load_share_limit" }
behind "permit.open_counts" { "permit.open_days_most", "permit.open_excuses" }
behind "permit.owner_statement_required" { "permit.owner_statements" }
behind "permit.part_as_new_counts" {
  "permit.part_as_new_at_counts", "permit.part_as_new_limit", "permit.part_as_new_months",
}
behind "permit.plane_share_counts" { "permit.plane_share_at_counts", "permit.plane_share_limit" }
behind "permit.price_counts" { "permit.price_at_counts", "permit.price_limit" }
behind "permit.rest_counts" {
  "permit.rest_at_counts", "permit.rest_by_section", "permit.rest_limit", "permit.rest_months",
  "permit.rest_relief", "permit.rest_relief_from",
}
behind "permit.right_of_way_required" { "permit.right_of_way_clear_required" }
behind "permit.share_counts" {
  "permit.share_at_counts", "permit.share_limit", "permit.share_months",
}
behind "permit.small_counts" { "permit.small_under" }
behind "permit.stories_counts" { "permit.stories_limit" }
behind "permit.warranty_counts" { "permit.warranty_years_least" }
behind "permit.weight_added_counts" { "permit.weight_added_limit" }
behind "permit.weight_rise_counts" { "permit.weight_rise_at_counts", "permit.weight_rise_limit" }
behind "permit.whole_planes_required" { "permit.whole_planes_least" }
behind "shingle.hail_early_exempt" { "shingle.hail_early_most" }
behind "shingle.hail_label_required" { "shingle.hail_labels", "shingle.hail_proofs" }
behind "shingle.weight_counts" { "shingle.weight_least" }
behind "underlayment.mid_wind_applies" {
  "underlayment.lap_spacing_mid_most", "underlayment.mid_wind_over",
}
behind "underlayment.sealed_deck_required" { "underlayment.sealed_deck_methods" }
behind "underlayment.wind_counts" {
  "underlayment.wind_by_map", "underlayment.wind_by_region", "underlayment.wind_from",
  "underlayment.wind_on_vasd",
}
behind "wind.vult_counts" { "wind.vult_least" }
behind "wood.primed_required" { "wood.primed_members" }
behind "wood.rot_replaced_required" { "wood.repairs_allowed" }
behind "wood.solid_eaves_required" { "wood.solid_eaves_at_most" }
