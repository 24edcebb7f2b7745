//! The plan as one page for a phone. A browser ticks its boxes in `tests/window/phone.py`; here is what stands on it.

use crate::report::sample;
use vatsketch::batch::batch;
use vatsketch::design::Design;
use vatsketch::export::html;
use vatsketch::report::{Plan, plan};
use vatsketch::session::EXAMPLES;

fn count(page: &str, words: &str) -> usize {
    page.matches(words).count()
}

#[test]
fn every_step_has_a_box_a_hold_stands_out_and_numbers_have_a_place() {
    for example in EXAMPLES {
        let plan = plan(&batch(&example.design().unwrap()).unwrap());
        let page = html(&plan);
        let steps: usize = plan.steps.iter().map(|step| step.times.len()).sum();
        let boxes = steps + plan.shopping.len() + plan.prepare.len();
        assert_eq!(count(&page, "type=\"checkbox\" id="), boxes, "{}", example.name);
        let holds: Vec<_> = plan.steps.iter().filter_map(|step| step.hold.as_ref()).collect();
        assert_eq!(count(&page, "<div class=\"hold\">"), holds.len(), "{}", example.name);
        let written: usize = plan.steps.iter().filter(|step| step.hold.is_none()).map(|step| step.times.len()).sum();
        let blanks: usize = holds.iter().map(|hold| hold.blanks.len()).sum();
        assert_eq!(count(&page, "<input type=\"text\""), written + blanks + plan.weighings.len(), "{}", example.name);
    }
}

/// The rest of the curd and the first test are choices in minutes: their timers count sixty times as many seconds.
#[test]
fn a_step_that_waits_has_a_timer_of_its_length() {
    let mut design = Design::default();
    (design.vat.whey_rest_min, design.vat.first_test_min) = (25.0, 37.0);
    let page = html(&plan(&batch(&design).unwrap()));
    assert!(page.contains("data-seconds=\"1500\">Start a timer of 25\u{a0}min"), "{page}");
    assert!(page.contains("data-seconds=\"2220\">Start a timer of 37\u{a0}min"), "from the rennet to the first test");
}

#[test]
fn nothing_is_loaded_from_elsewhere_and_no_word_of_the_maker_is_taken_for_the_page() {
    let title = "<script>alert(1)</script> & {{body}} \"x\"";
    let plan = Plan { title: title.to_owned(), note: "</p><img src=http://example.org>".to_owned(), ..plan(&sample::batch()) };
    let page = html(&plan);
    assert_eq!(count(&page, "<script"), 1, "our own");
    assert_eq!(count(&page, "<img"), 0);
    assert!(page.contains("&lt;script&gt;alert(1)&lt;/script&gt; &amp; &#123;&#123;body}} &quot;x&quot;"));
    assert!(page.contains("default-src 'none'"), "the browser itself refuses what is not in the page");
}

#[test]
fn ticks_of_one_plan_are_not_those_of_another() {
    let of = |title: &str| {
        let page = html(&Plan { title: title.to_owned(), ..plan(&sample::batch()) });
        page.split("vatsketch-plan-").nth(1).unwrap()[..16].to_owned()
    };
    assert_eq!(of("One"), of("One"));
    assert!(of("One") != of("Two"));
}
