//! Somebody who presses and types anything anywhere: nothing breaks, and nothing is lost. The seeds are fixed, so that a fault comes again.

use crate::ui::{PATH, example, shown_window, stopped};
use egui::{Event, Key, MissingGlyphPolicy, Modifiers, MouseWheelUnit, PointerButton, Pos2, Theme, TouchPhase, pos2, vec2};
use egui_kittest::kittest::Queryable;
use vatsketch::design::Design;
use vatsketch::figure::{Reading, figures};
use vatsketch::session::Session;
use vatsketch::ui::Window;

const SIZE: [f32; 2] = [1296.0, 816.0];
/// Events that come between two drawings.
const AT_ONCE: usize = 10;
/// Steps that undo keeps.
const STEPS_KEPT: usize = 500;

/// Numbers that follow from a seed: xorshift64, as in G. Marsaglia, Xorshift RNGs, J. Stat. Software 8(14), 2003.
struct Chance(u64);

impl Chance {
    fn below(&mut self, end: u64) -> u64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        self.0 % end
    }

    fn one<T: Copy>(&mut self, of: &[T]) -> T {
        of[usize::try_from(self.below(of.len() as u64)).unwrap()]
    }

    fn place(&mut self) -> Pos2 {
        pos2(self.below(SIZE[0] as u64) as f32, self.below(SIZE[1] as u64) as f32)
    }
}

fn key(key: Key, modifiers: Modifiers) -> [Event; 2] {
    [true, false].map(|pressed| Event::Key { key, physical_key: None, pressed, repeat: false, modifiers })
}

fn button(pos: Pos2, pressed: bool) -> Event {
    Event::PointerButton { pos, button: PointerButton::Primary, pressed, modifiers: Modifiers::NONE }
}

fn something(chance: &mut Chance) -> Vec<Event> {
    let plain = [
        Key::Tab,
        Key::Enter,
        Key::Escape,
        Key::ArrowLeft,
        Key::ArrowRight,
        Key::ArrowUp,
        Key::ArrowDown,
        Key::PageUp,
        Key::PageDown,
        Key::Home,
        Key::End,
        Key::Delete,
        Key::Backspace,
        Key::P,
        Key::F1,
        Key::F6,
        Key::F10,
        Key::Space,
    ];
    let with_ctrl =
        [Key::Z, Key::Z, Key::Y, Key::A, Key::N, Key::Num1, Key::Num2, Key::Num3, Key::Num4, Key::Num5, Key::Num6, Key::Num7];
    let texts =
        ["7", "0", ",", ".", "-", "9 cups", "97 F", "e", "½", "x", "1e999", "2031-05-09 18:30", "münster", "\u{202e}", "乳"];
    match chance.below(12) {
        0..=3 => {
            let at = chance.place();
            vec![Event::PointerMoved(at), button(at, true), button(at, false)]
        }
        4 => {
            let (from, to) = (chance.place(), chance.place());
            vec![Event::PointerMoved(from), button(from, true), Event::PointerMoved(to), button(to, false)]
        }
        5 => vec![Event::PointerMoved(chance.place())],
        6 => vec![Event::MouseWheel {
            unit: MouseWheelUnit::Line,
            delta: vec2(0.0, chance.below(9) as f32 - 4.0),
            phase: TouchPhase::Move,
            source: egui::MouseWheelSource::Wheel,
            modifiers: Modifiers::NONE,
        }],
        7 | 8 => key(chance.one(&plain), Modifiers::NONE).into(),
        9 => key(chance.one(&with_ctrl), Modifiers::COMMAND).into(),
        10 => key(chance.one(&[Key::Tab, Key::F6]), Modifiers::SHIFT).into(),
        _ => vec![Event::Text(chance.one(&texts).to_owned())],
    }
}

type Open = (Design, Option<Design>);

fn open(session: &Session) -> Open {
    (session.design().clone(), session.second().map(|second| second.design().clone()))
}

/// Undo goes back to the start, and redo forward again.
fn goes_back_and_forward(session: &mut Session, start: &Open) {
    session.end_drag();
    let (now, mut steps) = (open(session), 0);
    let undone = session.history().redo_name().is_some();
    while session.history().undo_name().is_some() {
        session.undo().unwrap();
        steps += 1;
    }
    if steps < STEPS_KEPT {
        assert!(&open(session) == start, "{steps} steps back are not the start");
    }
    for _ in 0..steps {
        session.redo().unwrap();
    }
    assert!(open(session) == now, "{steps} steps back and forward, some undone: {undone}");
}

fn is_sound(session: &Session) {
    for open in [Some(session.open_designs().0), session.open_designs().1].into_iter().flatten() {
        for figure in figures(open.batch()) {
            if let Reading::Number(value) = figure.reading {
                assert!(value.is_finite(), "{} is {value}", figure.key);
            }
        }
        assert!(open.batch().design == *open.design());
    }
}

fn let_loose(seed: u64, events: usize) {
    let mut chance = Chance(seed);
    let mut harness = shown_window(Window::plain(example("warm-cabinet"), stopped()), SIZE, Theme::Light);
    // As in the program: a letter that no face has is drawn as a box. Tests are stopped by one, since our own texts must have none.
    harness.ctx.set_missing_glyph_policy(MissingGlyphPolicy::Tofu);
    let mut start = open(&harness.state().session);
    let mut done = 0;
    let mut round = 0;
    while done < events {
        // A path is never taken: nothing may be written where the tests run.
        if harness.query_by_label(PATH).is_some() {
            for event in key(Key::Escape, Modifiers::NONE) {
                harness.event(event);
            }
            harness.step();
            continue;
        }
        while done < events && harness.query_by_label(PATH).is_none() {
            let some: Vec<Event> = (0..AT_ONCE).flat_map(|_| something(&mut chance)).take(AT_ONCE).collect();
            done += some.len();
            for event in some {
                harness.event(event);
            }
            harness.step();
            let session = &harness.state().session;
            if session.history().undo_name().is_none() && session.history().redo_name().is_none() && !session.is_dragging() {
                start = open(session);
            }
            round += 1;
            if round % 50 == 0 {
                is_sound(&harness.state().session);
                let mut session = harness.state().session.clone();
                goes_back_and_forward(&mut session, &start);
            }
        }
    }
    is_sound(&harness.state().session);
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("after.vat.ron");
    let session = &mut harness.state_mut().session;
    session.end_drag();
    session.save(&path).unwrap();
    assert_eq!(Session::open_file(&path).unwrap().design(), session.design());
    goes_back_and_forward(session, &start);
}

#[test]
fn a_little_of_anything_breaks_nothing() {
    let_loose(0x5eed_0001, 700);
}

/// About a quarter of an hour: `cargo test --test house monkey -- --ignored`.
#[test]
#[ignore = "fifty thousand events take long; see DEVELOPERS.md"]
fn fifty_thousand_events_break_nothing() {
    for seed in 1..=10 {
        let_loose(0x5eed_1000 + seed, 5000);
    }
}
