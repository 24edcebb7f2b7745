//! The window around a session, and what only it has: menus, prompts, dialogs.

pub(super) mod app;
pub(super) mod background;
pub(super) mod carry_out;
pub(super) mod changed_bar;
pub(super) mod design_page;
pub(super) mod figure;
pub(super) mod files;
pub(super) mod in_front;
pub(super) mod keeping;
pub(super) mod keys;
pub(super) mod keys_list;
pub(super) mod layout;
pub(super) mod logic;
pub(super) mod menus;
pub(super) mod notice;
pub(super) mod on_disk;
pub(super) mod order;
pub(super) mod pane;
pub(super) mod plan;
pub(super) mod plan_parts;
pub(super) mod prompt;
pub(super) mod recover_prompt;
pub(super) mod second;
pub(super) mod shell;
pub(super) mod sources_page;
pub(super) mod top_bar;
