//! The choices about the vinegar.

use super::field::stage_design;
use super::{JarLay, PhFrom, Unit, VinegarBy};

stage_design! {
    /// Souring in vinegar.
    PicklingDesign in Pickling {
        switch pickled: "Soured in vinegar", true; "Whether the dried cheeses go into vinegar.";
        PhFrom cheese_ph_from: "pH of the dried cheese", PhFrom::Calculated; "Take the pH of the dried cheese as it is calculated, or as your meter said.";
        number cheese_ph: "Measured pH of the dried cheese", Unit::One, 6.5, 4.2..=7.0, 0.05; "pH of the dried cheese by your own meter; without a culture or an acid it stays near 6.5.", when |d| d.cheese_ph_from == PhFrom::Measured;
        number acid_g_per_100ml: "Strength of the vinegar", Unit::GramIn100Millilitre, 6.0, 0.5..=10.0, 0.5; "Acetic acid, g in 100 mL; the label's per cent.", when |d| d.pickled;
        VinegarBy vinegar_by: "Amount of vinegar", VinegarBy::PerGram; "Measure the vinegar by the weight of the cheeses, or only cover them.", when |d| d.pickled;
        number vinegar_ml_per_g: "Vinegar for each gram of cheese", Unit::MillilitrePerGram, 3.2, 0.2..=12.0, 0.1; "Vinegar for each gram of dried cheese; below 2 mL a cheese may never sour, so use 3 mL or more.", when |d| d.pickled && d.vinegar_by == VinegarBy::PerGram;
        number vinegar_salt_g_per_100ml: "Salt in the vinegar", Unit::GramIn100Millilitre, 0.0, 0.0..=15.0, 0.1; "Fine salt stirred into each 100 mL of vinegar. With none, the vinegar takes most of the salt out of the cheese. Much salt also holds water back, so that the cheese stays firmer.", when |d| d.pickled;
        number pickling_temperature_c: "Temperature of the vinegar", Unit::Celsius, 4.0, 0.0..=40.0, 0.5; "Temperature of the jar during the soak. Cold slows the acid, and slows germs much more.", when |d| d.pickled;
        number pickling_h: "Time in the vinegar", Unit::Hour, 504.0, 0.0..=2000.0, 12.0; "Hours from covering the cheeses with vinegar to the end of the soak.", when |d| d.pickled;
        number jar_width_mm: "Jar width inside", Unit::Millimetre, 94.0, 30.0..=400.0, 1.0; "Inner diameter of the jar.";
        number jar_height_mm: "Jar depth to the fill line", Unit::Millimetre, 132.0, 20.0..=600.0, 1.0; "Inner depth from the bottom up to the line to which you fill it.";
        JarLay jar_lay: "How the cheeses lie in the jar", JarLay::Flat; "With mesh or gaps the vinegar reaches every face. Stacked cheeses sour like one thick cheese, and take much longer.";
    }
}
