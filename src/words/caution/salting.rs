//! Cautions about salt and pepper, in words.

use crate::caution::{SALT_LITTLE, SALT_USUAL, SPICES_WITH_BACILLI, SPICES_WITH_CEREUS, SaltingCaution};
use crate::words::number::{quantity, value};
use crate::words::said::{CautionWords, said};

pub(super) fn words(caution: &SaltingCaution) -> CautionWords {
    let usual = format!("{} to {} g is usual", value(&SALT_LITTLE), value(&SALT_USUAL));
    match caution {
        SaltingCaution::LittleSalt { salt_percent } => said(
            format!("{salt_percent:.1} g of salt in 100 g of the cheese's water is little for a fresh cheese."),
            format!("{usual}. Salt alone never replaces acid or cold."),
            "Little salt for a fresh cheese.",
        ),
        SaltingCaution::MuchSalt { salt_percent } => said(
            format!("{salt_percent:.1} g of salt in 100 g of the cheese's water tastes very salty."),
            format!("{usual}. Use less salt."),
            "The cheese will taste very salty.",
        ),
        SaltingCaution::SaltOnFaces { salt_g } => said(
            format!(
                "When the cheeses leave the moulds, {salt_g:.1} g of salt is still on each of them. What falls off is missing from the salt that is calculated here."
            ),
            "Salt at fewer turns, so that the last salt has more time to go in, or use less salt.",
            "Some salt falls off when the cheeses leave the moulds.",
        ),
        SaltingCaution::UntreatedPepper => said(
            format!(
                "Pepper that was not treated brings germs onto the cheese. Among germs in spices, Salmonella makes people ill most often; surveys found bacilli in {} of spices and Bacillus cereus in {} of processed spices.",
                quantity(&SPICES_WITH_BACILLI),
                quantity(&SPICES_WITH_CEREUS)
            ),
            "Buy pepper that was steamed or treated in another way against germs, or leave it off. Roasting in a pan does not kill all spores.",
            "Untreated pepper brings germs: buy treated pepper, or leave it off.",
        ),
    }
}
