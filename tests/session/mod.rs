//! Tests of `src/session`.

mod aim;
mod changes;
mod example_cards;
mod examples;
mod fault;
mod files;
mod id;
mod jobs;
mod judged;
mod keeping;
mod kitchen;
mod logbook;
mod probe_import;
mod recovery;
mod scale;
mod second;
mod steps;
mod week;
mod welcomed;
