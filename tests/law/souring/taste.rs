//! Taste and body in words.

use vatsketch::law::souring::Taste;

/// From memory: mild at 6.5, soft from 5.8 to 5.4, short from 5.2 to 5.0, sour at 4.6.
#[test]
fn each_ph_of_the_list_has_its_words() {
    let expected =
        [(6.5, Taste::Mild), (5.8, Taste::Soft), (5.4, Taste::Soft), (5.2, Taste::Short), (5.0, Taste::Short), (4.6, Taste::Sour)];
    for (ph, taste) in expected {
        assert_eq!(Taste::at(ph), taste, "pH {ph}");
    }
    assert_eq!(Taste::at(f64::NAN), Taste::Mild);
    let words = [Taste::Mild, Taste::Soft, Taste::Short, Taste::Sour].map(Taste::words);
    assert!(words.iter().all(|said| words.iter().filter(|other| *other == said).count() == 1));
}
