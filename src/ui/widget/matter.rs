//! The colours of matter: the same in the run, in the curves and in the cut. A design is told by its stroke and its letter, never by these.

use crate::curve::{Flowing, SectionKey, Substance, Tone};
use crate::law::growth::TABLE_B_PH;
use egui::{Color32, Ui};

/// The colours of matter in one theme.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct MatterColours {
    /// Water, as a layer.
    pub water: Color32,
    /// Fat.
    pub fat: Color32,
    /// Protein and curd.
    pub curd: Color32,
    /// Salt.
    pub salt: Color32,
    /// Whey that runs off.
    pub whey: Color32,
    /// Vapour.
    pub vapour: Color32,
    /// Vinegar.
    pub vinegar: Color32,
    /// Lines: milk, what stands around it, whey, salt, the whole cheese, its centre, its face.
    pub lines: [Color32; 7],
    /// Lines of germs, in the order in which they are drawn.
    pub germs: [Color32; 6],
}

const fn rgb(hex: u32) -> Color32 {
    Color32::from_rgb((hex >> 16) as u8, (hex >> 8) as u8, hex as u8)
}

impl MatterColours {
    /// By day.
    pub const LIGHT: Self = Self {
        water: rgb(0x009F_C5DC),
        fat: rgb(0x00E3_BC55),
        curd: rgb(0x00B5_A690),
        salt: rgb(0x0064_7C99),
        whey: rgb(0x00C3_CE7C),
        vapour: rgb(0x00C2_D3DF),
        vinegar: rgb(0x00D5_974E),
        lines: [
            rgb(0x001D_76AB),
            rgb(0x0080_6E60),
            rgb(0x006B_7819),
            rgb(0x0050_6A8A),
            rgb(0x001D_6C9E),
            rgb(0x0079_388C),
            rgb(0x0092_6A12),
        ],
        germs: [rgb(0x0079_388C), rgb(0x001D_6C9E), rgb(0x0017_766B), rgb(0x0092_6A12), rgb(0x0048_7A2C), rgb(0x0080_6E60)],
    };

    /// By night.
    pub const DARK: Self = Self {
        water: rgb(0x0045_7C9C),
        fat: rgb(0x00C9_9E36),
        curd: rgb(0x00A0_9483),
        salt: rgb(0x008B_A3BF),
        whey: rgb(0x008B_9745),
        vapour: rgb(0x0056_6B7B),
        vinegar: rgb(0x00B6_7A33),
        lines: [
            rgb(0x0078_C1EE),
            rgb(0x00AF_9E8E),
            rgb(0x00C4_D06A),
            rgb(0x00A0_B8D4),
            rgb(0x0078_C1EE),
            rgb(0x00D6_A2EA),
            rgb(0x00E2_BC63),
        ],
        germs: [rgb(0x00D6_A2EA), rgb(0x0078_C1EE), rgb(0x005F_C3B5), rgb(0x00E2_BC63), rgb(0x0097_CF78), rgb(0x00AF_9E8E)],
    };

    /// Returns the colours of the theme that is on.
    #[must_use]
    pub fn of(ui: &Ui) -> Self {
        if ui.visuals().dark_mode { Self::DARK } else { Self::LIGHT }
    }

    /// Returns the colour of a layer of the run.
    #[must_use]
    pub const fn layer(&self, substance: Substance) -> Color32 {
        match substance {
            Substance::Water => self.water,
            Substance::Fat => self.fat,
            Substance::Curd => self.curd,
            Substance::Salt => self.salt,
        }
    }

    /// Returns the colour of what joins or leaves the run.
    #[must_use]
    pub const fn stream(&self, like: Flowing) -> Color32 {
        match like {
            Flowing::Water => self.vapour,
            Flowing::Salt => self.salt,
            Flowing::Vinegar => self.vinegar,
            Flowing::Cream => self.fat,
            Flowing::Milk => self.water,
            Flowing::Whey => self.whey,
        }
    }

    /// Returns the colour of a line; a limit has that of soft text.
    ///
    /// * `soft`: the colour of soft text
    #[must_use]
    pub fn line(&self, tone: Tone, soft: Color32) -> Color32 {
        let [milk, around, whey, salt, whole, centre, face] = self.lines;
        match tone {
            Tone::Milk => milk,
            Tone::Around => around,
            Tone::Whey => whey,
            Tone::Salt => salt,
            Tone::Whole => whole,
            Tone::Centre => centre,
            Tone::Face => face,
            Tone::Germ(place) => self.germs.get(usize::from(place)).copied().unwrap_or(around),
            Tone::Limit => soft,
        }
    }
}

/// Returns the colours of a cut from its lowest value to its highest, with the share of the scale at which each stands. Water and salt grow darker in
/// one hue, so that lightness alone tells the order; pH has two hues that part where the cheese is sour enough.
const fn ramp(key: SectionKey) -> &'static [(f32, [f32; 3])] {
    match key {
        SectionKey::Moisture | SectionKey::SoakMoisture => {
            &[(0.0, [244.0, 232.0, 204.0]), (0.45, [158.0, 197.0, 217.0]), (1.0, [18.0, 74.0, 116.0])]
        }
        SectionKey::Salt | SectionKey::SoakSalt => {
            &[(0.0, [240.0, 240.0, 236.0]), (0.5, [146.0, 164.0, 184.0]), (1.0, [44.0, 62.0, 88.0])]
        }
        SectionKey::Ph => PH_RAMP,
        SectionKey::Germs => &[(0.0, [243.0, 239.0, 232.0]), (0.5, [170.0, 130.0, 186.0]), (1.0, [84.0, 26.0, 104.0])],
    }
}

/// Share of the scale of pH at which the colours part.
const PH_TURNS: f32 = {
    let (least, most) = SectionKey::Ph.scale();
    ((TABLE_B_PH.value - least) / (most - least)) as f32
};

/// Blue where the cheese is sour, and brown where it is not.
const PH_RAMP: &[(f32, [f32; 3])] =
    &[(0.0, [32.0, 84.0, 128.0]), (PH_TURNS, [206.0, 218.0, 216.0]), (PH_TURNS, [246.0, 226.0, 178.0]), (1.0, [140.0, 66.0, 16.0])];

/// Returns the colour of a value on the scale of a cut.
pub(in crate::ui) fn on_scale(key: SectionKey, value: f64) -> Color32 {
    let (least, most) = key.scale();
    let share = ((value - least) / (most - least)).clamp(0.0, 1.0) as f32;
    let stops = ramp(key);
    // The last stop below the value: where two stand at one place the value takes the hue of its own side.
    let above = stops.iter().position(|(at, _)| *at > share).unwrap_or(stops.len() - 1).max(1);
    let (Some((from, low)), Some((to, high))) = (stops.get(above - 1), stops.get(above)) else { return Color32::GRAY };
    let way = ((share - from) / (to - from).max(f32::MIN_POSITIVE)).clamp(0.0, 1.0);
    let [red, green, blue] = std::array::from_fn(|part| {
        let of = |colour: &[f32; 3]| colour.get(part).copied().unwrap_or(0.0);
        (of(low) + way * (of(high) - of(low))).round() as u8
    });
    Color32::from_rgb(red, green, blue)
}
