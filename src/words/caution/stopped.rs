//! A stage that failed, in words.

use crate::caution::StageFailed;
use crate::words::said::{CautionWords, said};

pub(super) fn words(failed: &StageFailed) -> CautionWords {
    said(
        format!("A stage cannot be calculated: {}.", failed.error),
        "Change the choice named here. The stages before this one are shown; the stages after it are missing.",
        "A stage cannot be calculated; the plan ends there.",
    )
}
