//! Files of every released format open for ever; none below `tests/saved` may be changed or removed.

use vatsketch::batch::batch;
use vatsketch::design::{
    AcidBy, BuyFor, CalciumForm, CreamBy, CultureBy, CultureKind, DryingPlace, Field, Good, Habitual, Heating, JarLay, KeptIn,
    MilkAcid, MilkKind, MilkTreatment, PhFrom, RennetLabel, SouredBy, Stage, VinegarBy, Wish, fields, hour, read_moment,
};
use vatsketch::file::{DesignFile, from_text, read, to_text};

const FILES: [&str; 5] = ["ewes-milk", "first-vat", "open-air", "own-carton", "small-vat"];

fn saved(name: &str) -> vatsketch::design::Design {
    let path = format!("{}/tests/saved/1-{name}.vat.ron", env!("CARGO_MANIFEST_DIR"));
    read(path.as_ref()).unwrap_or_else(|error| panic!("{name}: {error}"))
}

#[test]
fn every_file_of_format_one_opens_and_is_worked_out() {
    for name in FILES {
        let design = saved(name);
        assert!(batch(&design).unwrap().drying.done().is_some(), "{name}");
        assert_eq!(from_text(&to_text(&design)).unwrap(), design, "{name}");
    }
}

/// Whatever the examples become, these are the values that were saved.
#[test]
fn files_of_format_one_mean_what_they_meant() {
    let carton = saved("own-carton");
    assert_eq!(carton.title, "By the carton");
    assert!(carton.note.contains("invented"));
    assert_eq!((carton.milk.milk_l, carton.milk.milk_kind), (4.5, MilkKind::Label));
    assert_eq!((carton.milk.cream_by, carton.milk.cream_on_hand_ml), (CreamBy::CreamAmount, 180.0));
    assert_eq!((carton.milk.calcium_form, carton.milk.rennet_label), (CalciumForm::Solution, RennetLabel::Ratio));
    assert_eq!(carton.vat.heating, Heating::DoubleBoiler);
    assert_eq!((carton.draining.mould_count, carton.salting.salted_turns), (10, 2));
    assert!(!carton.pickling.pickled && carton.keeping.kept_in == KeptIn::Bare, "format 1 ended with drying");
    let open_air = saved("open-air");
    assert_eq!((open_air.drying.drying_place, open_air.drying.drying_h), (DryingPlace::OpenAir, 132.0));
    assert_eq!(open_air.milk.milk_treatment, MilkTreatment::Pasteurised);
}

/// Format 1 is frozen: each of its members stands in the files, so none can be dropped unseen.
#[test]
fn a_saved_file_holds_every_input() {
    let path = format!("{}/tests/saved/1-first-vat.vat.ron", env!("CARGO_MANIFEST_DIR"));
    let text = std::fs::read_to_string(path).unwrap();
    // What came with format 2 and format 5.
    let newer = |field: &Field| {
        field.stage > Stage::Drying
            || field.key.starts_with("pepper")
            || field.key == CAME_WITH_SIX
            || CAME_WITH_SEVEN.contains(&field.key)
            || CAME_WITH_FIVE.contains(&field.key)
    };
    for field in fields().filter(|field| !newer(field)) {
        assert!(text.contains(&format!("{}: ", field.key)), "{} is in no file", field.key);
    }
}

#[test]
fn every_file_of_format_two_opens_and_means_what_it_meant() {
    let saved = |name: &str| read(format!("{}/tests/saved/2-{name}.vat.ron", env!("CARGO_MANIFEST_DIR")).as_ref()).unwrap();
    for name in FILES {
        let design = saved(name);
        assert_eq!(from_text(&to_text(&design)).unwrap(), design, "{name}");
    }
    let ewes = saved("ewes-milk");
    assert_eq!((ewes.pickling.jar_lay, ewes.keeping.kept_in), (JarLay::OnEdge, KeptIn::Oil));
    assert_eq!((ewes.pickling.acid_g_per_100ml, ewes.keeping.poured_off_percent), (7.0, 85.0));
    let open_air = saved("open-air");
    assert_eq!((open_air.pickling.vinegar_by, open_air.salting.pepper_g_dm2), (VinegarBy::Cover, 1.4));
    assert!(!saved("small-vat").pickling.pickled && !saved("own-carton").salting.pepper_treated);
    let text = std::fs::read_to_string(format!("{}/tests/saved/2-first-vat.vat.ron", env!("CARGO_MANIFEST_DIR"))).unwrap();
    let mut before_five = fields().filter(|field| before_six(field) && !CAME_WITH_FIVE.contains(&field.key));
    assert!(before_five.all(|field| text.contains(&format!("{}: ", field.key))), "an input is in no file");
}

/// The week and the supplies are those of the examples when format 3 was released.
#[test]
fn every_file_of_format_three_opens_and_means_what_it_meant() {
    let path = |name: &str| format!("{}/tests/saved/3-{name}.vat.ron", env!("CARGO_MANIFEST_DIR"));
    for name in FILES {
        let design = read(path(name).as_ref()).unwrap();
        assert_eq!(from_text(&to_text(&design)).unwrap(), design, "{name}");
    }
    let first = read(path("first-vat").as_ref()).unwrap();
    assert_eq!(first.week.wish, Wish::FinishedBy(read_moment("2031-06-20 17:30").unwrap()));
    assert_eq!(first.week.taken[1].by, Habitual::Work);
    assert_eq!(first.week.taken[1].days, [false, true, true, true, false, false, false]);
    assert_eq!((hour(first.week.taken[0].from), hour(first.week.taken[0].to)), ("22:30".to_owned(), "06:15".to_owned()));
    assert_eq!(first.week.busy[0].from, read_moment("2031-05-24 18:00").unwrap());
    assert_eq!(first.week.reached.as_ref().unwrap().task, "cut");
    assert_eq!(
        (first.supplies.buy_for, first.supplies.waste_price, first.supplies.currency.as_str()),
        (BuyFor::LeastCost, 0.4, "coins")
    );
    assert_eq!(first.supplies.goods[&Good::Milk].offers[0].size, 1250.0);
    let ewes = read(path("ewes-milk").as_ref()).unwrap();
    assert_eq!((ewes.supplies.buy_for, ewes.supplies.goods[&Good::SheepMilk].offers[0].at_most), (BuyFor::LeastWaste, Some(5)));
    assert_eq!(ewes.supplies.goods[&Good::Oil].at_home, 300.0);
    let text = std::fs::read_to_string(path("first-vat")).unwrap();
    let mut before_five = fields().filter(|field| before_six(field) && !CAME_WITH_FIVE.contains(&field.key));
    assert!(before_five.all(|field| text.contains(&format!("{}: ", field.key))), "an input is in no file");
    for member in [
        "wish",
        "zone",
        "taken",
        "busy",
        "reached",
        "buy_for",
        "waste_price",
        "currency",
        "goods",
        "stretch",
        "packages",
        "at_most",
    ] {
        assert!(text.contains(&format!("{member}: ")), "{member} is in no file");
    }
}

/// What format 4 changed is the id and the word for the wish; all else is as in format 3.
#[test]
fn every_file_of_format_four_opens_and_means_what_it_meant() {
    let path = |format: u32, name: &str| format!("{}/tests/saved/{format}-{name}.vat.ron", env!("CARGO_MANIFEST_DIR"));
    let ids = [
        "c1a7d0f2-6b35-4e89-a4d1-70f3b58e2c96",
        "5b0f6a4e-3c1d-4f7a-9d2e-8a61c70b94f3",
        "e83f94b7-0d52-4c6e-b17a-259ad4f06c18",
        "2d96c5e1-f7a8-43b0-8c4f-b6e01d7359fa",
        "97e4b20c-a516-4d3f-9be8-04c8f1a2d765",
    ];
    for (name, id) in FILES.into_iter().zip(ids) {
        let file = DesignFile::read(path(4, name).as_ref()).unwrap();
        assert_eq!(file.id.unwrap().to_string(), id, "{name}");
        assert_eq!(DesignFile::from_text(&file.to_text()).unwrap(), file, "{name}");
        assert_eq!(file.design, read(path(3, name).as_ref()).unwrap(), "{name}");
    }
    let text = std::fs::read_to_string(path(4, "first-vat")).unwrap();
    assert!(text.contains("wish: finished_by(\"2031-06-20 17:30\")"), "the wish has another word");
    // The formats do not take each other's word.
    assert!(from_text("(format: 3, week: (wish: finished_by(\"2031-06-20 17:30\")))").is_err());
    assert!(from_text("(format: 7, week: (wish: ready_by(\"2031-06-20 17:30\")))").is_err());
}

/// What format 5 added: what sours the milk, a pH measured on the way, and raw milk that is pasteurised in the vat. Each file sours in another way; all else is as in format 4.
#[test]
fn every_file_of_format_five_opens_and_means_what_it_meant() {
    let path = |format: u32, name: &str| format!("{}/tests/saved/{format}-{name}.vat.ron", env!("CARGO_MANIFEST_DIR"));
    let read = |name: &str| DesignFile::read(path(5, name).as_ref()).unwrap();
    for name in FILES {
        let file = read(name);
        let before = DesignFile::read(path(4, name).as_ref()).unwrap();
        assert_eq!(file.id, before.id, "{name}");
        assert_eq!(DesignFile::from_text(&file.to_text()).unwrap(), file, "{name}");
        let same = fields().filter(|field| !CAME_WITH_FIVE.contains(&field.key));
        for field in same {
            assert_eq!(field.get(&file.design), field.get(&before.design), "{name}: {}", field.key);
        }
        let text = std::fs::read_to_string(path(5, name)).unwrap();
        let mut before_six = fields().filter(|field| before_six(field));
        assert!(before_six.all(|field| text.contains(&format!("{}: ", field.key))), "an input is not in {name}");
    }
    let ewes = read("ewes-milk").design;
    assert_eq!(
        (ewes.milk.soured_by, ewes.milk.culture_kind, ewes.milk.culture_by),
        (SouredBy::Culture, CultureKind::Mixed, CultureBy::Bulk)
    );
    assert_eq!((ewes.milk.culture_bulk_percent, ewes.milk.ripening_temperature_c, ewes.milk.ripening_h), (1.5, 32.5, 2.25));
    assert_eq!((ewes.draining.ladled_ph_from, ewes.draining.ladled_ph), (PhFrom::Measured, 6.25));
    assert_eq!((ewes.drying.unmoulded_ph_from, ewes.drying.unmoulded_ph), (PhFrom::Measured, 5.35));
    assert_eq!(ewes.pickling.cheese_ph_from, PhFrom::Measured);
    let loft = read("open-air").design.milk;
    assert_eq!(
        (loft.culture_kind, loft.culture_by, loft.culture_cells_million_g),
        (CultureKind::Thermophilic, CultureBy::Cells, 18.0)
    );
    assert_eq!(
        (loft.pasteurised_in_vat, loft.pasteurising_temperature_c, loft.pasteurising_extra_min, loft.cooling_water_l),
        (true, 72.0, 5.0, 45.0)
    );
    assert_eq!((loft.pasteurising_bath_temperature_c, loft.cooling_water_temperature_c), (80.0, 1.5));
    assert_eq!((loft.culture_packet_l, loft.culture_packets), (20.0, 0.3));
    let carton = read("own-carton").design.milk;
    assert_eq!((carton.soured_by, carton.milk_acid, carton.acid_by), (SouredBy::Acid, MilkAcid::Vinegar, AcidBy::Amount));
    assert_eq!((carton.milk_acid_g_l, carton.milk_vinegar_g_per_100ml), (0.9, 4.5));
    let small = read("small-vat").design.milk;
    assert_eq!((small.soured_by, small.lactone_g_l), (SouredBy::Lactone, 4.5));
    assert_eq!((small.milk_acid, small.lactic_acid_percent, small.soured_milk_ph), (MilkAcid::Lactic, 72.0, 6.05));
}

/// What format 6 added: cheeses that touch, salt in the vinegar, and a price for each animal's milk. All else is as in format 5.
#[test]
fn every_file_of_format_six_opens_and_means_what_it_meant() {
    let path = |format: u32, name: &str| format!("{}/tests/saved/{format}-{name}.vat.ron", env!("CARGO_MANIFEST_DIR"));
    let read = |format: u32, name: &str| DesignFile::read(path(format, name).as_ref()).unwrap();
    for name in FILES {
        let (file, before) = (read(6, name), read(5, name));
        assert_eq!(file.id, before.id, "{name}");
        assert_eq!(DesignFile::from_text(&file.to_text()).unwrap(), file, "{name}");
        for field in fields().filter(|field| before_six(field) && field.key != "jar_lay") {
            assert_eq!(field.get(&file.design), field.get(&before.design), "{name}: {}", field.key);
        }
        let text = std::fs::read_to_string(path(6, name)).unwrap();
        let mut before_seven = fields().filter(|field| !CAME_WITH_SEVEN.contains(&field.key));
        assert!(before_seven.all(|field| text.contains(&format!("{}: ", field.key))), "an input is not in {name}");
    }
    let (ewes, loft) = (read(6, "ewes-milk").design, read(6, "open-air").design);
    assert_eq!((ewes.pickling.vinegar_salt_g_per_100ml, loft.pickling.jar_lay), (3.5, JarLay::FlatTouching));
    assert_eq!(ewes.supplies, read(5, "ewes-milk").design.supplies, "what was the milk of a vat of sheep's milk is sheep's milk");
    let goods = "(format: 6, supplies: (goods: [(good: culture), (good: acid_for_milk), (good: lactone), (good: goat_milk), (good: buffalo_milk)]))";
    let goods: Vec<Good> = from_text(goods).unwrap().supplies.goods.into_keys().collect();
    assert_eq!(goods, [Good::Culture, Good::MilkAcid, Good::Lactone, Good::GoatMilk, Good::BuffaloMilk]);
    assert!(from_text("(format: 5, supplies: (goods: [(good: culture)]))").is_err());
}

/// What format 7 added: the size of the curd pieces, counted drops, and hours that are impossible. All else is as in format 6.
#[test]
fn every_file_of_format_seven_opens_and_means_what_it_meant() {
    let path = |format: u32, name: &str| format!("{}/tests/saved/{format}-{name}.vat.ron", env!("CARGO_MANIFEST_DIR"));
    let read = |format: u32, name: &str| DesignFile::read(path(format, name).as_ref()).unwrap();
    for name in FILES {
        let (file, before) = (read(7, name), read(6, name));
        assert_eq!(file.id, before.id, "{name}");
        assert_eq!(DesignFile::from_text(&file.to_text()).unwrap(), file, "{name}");
        for field in fields().filter(|field| !CAME_WITH_SEVEN.contains(&field.key)) {
            assert_eq!(field.get(&file.design), field.get(&before.design), "{name}: {}", field.key);
        }
        assert_eq!(file.design.supplies, before.design.supplies, "{name}");
        let text = std::fs::read_to_string(path(7, name)).unwrap();
        assert!(fields().all(|field| text.contains(&format!("{}: ", field.key))), "an input is not in {name}");
    }
    let pieces_mm = ["ewes-milk", "first-vat", "open-air"].map(|name| read(7, name).design.vat.curd_piece_mm);
    assert_eq!(pieces_mm, [12.0, 30.0, 25.0]);
    let carton = read(7, "own-carton").design.milk;
    assert_eq!((carton.calcium_drops_counted, carton.calcium_drops_in_ml), (true, 22.5));
    assert_eq!((carton.rennet_drops_counted, carton.rennet_drops_in_ml), (true, 26.0));
    let first = read(7, "first-vat").design.week;
    assert!(first.busy[0].impossible && first.taken.iter().all(|taken| !taken.impossible));
    assert!(read(7, "small-vat").design.week.taken[0].impossible);
}

/// The inputs that came with format 7.
const CAME_WITH_SEVEN: [&str; 5] =
    ["curd_piece_mm", "calcium_drops_counted", "calcium_drops_in_ml", "rennet_drops_counted", "rennet_drops_in_ml"];

/// Returns whether there was an input before format 6.
fn before_six(field: &Field) -> bool {
    field.key != CAME_WITH_SIX && !CAME_WITH_SEVEN.contains(&field.key)
}

/// The input that came with format 6.
const CAME_WITH_SIX: &str = "vinegar_salt_g_per_100ml";

/// The inputs that came with format 5.
const CAME_WITH_FIVE: [&str; 27] = [
    "pasteurised_in_vat",
    "pasteurising_temperature_c",
    "pasteurising_extra_min",
    "pasteurising_bath_temperature_c",
    "cooling_water_l",
    "cooling_water_temperature_c",
    "soured_by",
    "culture_kind",
    "culture_by",
    "culture_packet_l",
    "culture_packets",
    "culture_bulk_percent",
    "culture_cells_million_g",
    "ripening_temperature_c",
    "ripening_h",
    "milk_acid",
    "acid_by",
    "soured_milk_ph",
    "milk_acid_g_l",
    "milk_vinegar_g_per_100ml",
    "lactic_acid_percent",
    "lactone_g_l",
    "ladled_ph_from",
    "ladled_ph",
    "unmoulded_ph_from",
    "unmoulded_ph",
    "cheese_ph_from",
];
