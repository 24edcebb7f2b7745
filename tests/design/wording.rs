//! Words in the middle of a sentence.

use vatsketch::design::lower_first;
use vatsketch::law::growth::Germ;

#[test]
fn the_names_of_all_germs_keep_their_capital_within_a_sentence() {
    for germ in Germ::ALL {
        assert_eq!(lower_first(germ.name()), germ.name());
    }
    assert_eq!(lower_first("Milk in the vat"), "milk in the vat");
}
