//! The suite: everything checked from outside the core, in one binary. Modules mirror the core's rooms.

#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::string_slice,
    reason = "a test may fail loudly"
)]

mod a_language;
mod aside;
mod backup_damage;
mod backup_files;
mod backup_folders;
mod backup_generations;
mod backup_kills;
mod backups;
mod bad_input;
mod believed;
mod bench_bindings;
mod bench_case;
mod bench_contradicted;
mod bench_gauge;
mod bench_visit;
mod bindings;
mod bore;
mod bore_coverage;
mod bore_files;
mod bore_properties;
mod bore_sets;
mod cards;
mod cases;
mod cases_of_the_trade;
mod clocks;
mod data_folders;
mod demo;
mod device_codes;
mod driveline;
mod erase;
mod erase_everywhere;
mod fit;
mod fit_strength;
mod foreign_databases;
mod found_first;
mod gates;
mod gauge;
mod gauge_fit_reference;
mod handover;
mod handover_corpus;
mod handover_files;
mod handover_hostile;
mod import_kills;
mod kills;
mod known_car;
mod languages;
mod largest_files;
mod learning;
mod ledger;
mod limits;
mod monotone;
mod monte_carlo;
mod numbers;
mod own_layout;
mod own_things;
mod panics;
mod papers;
mod particulars;
mod phone_project;
mod photo_marks;
mod photo_proof;
mod photo_reference;
mod photo_wishes;
mod photos;
mod picture_corpus;
mod picture_files;
mod picture_hostile;
mod practice;
mod published;
mod qr;
mod road_test;
mod rules_exhaustive;
mod rules_first;
mod salvage_pages;
mod schemas;
mod set_aside;
mod set_aside_kills;
mod signatures;
mod sorting;
mod supply;
mod support;
mod tidy;
mod trade_contradicted;
mod trust;
mod verdict;
mod vin_barcode;
mod workshops;
mod wrong_guesses;
