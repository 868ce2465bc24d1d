//! What does not fit on the way back from a publish date.

use super::Tongue;
use benchslate_core::planning::publishing::Trouble;

/// What is wrong, and what can be done. `due`: what a due is called.
pub fn trouble(tongue: &Tongue, trouble: Trouble, due: &str) -> String {
    let day = |day| tongue.day(day);
    match trouble {
        Trouble::Circle { .. } => format!("{due} counts from itself, by way of others: it has no day."),
        Trouble::NegativeLead { .. } => format!("{due} has days below nought: it has no day."),
        Trouble::NegativeInList { at } => {
            format!("Row {at} of the list has days below nought: counted as none.")
        }
        Trouble::UnreadInList { line } => format!("Line {line} of the list can\u{2019}t be read: left out."),
        Trouble::NoWorkingDay => {
            "Whoever reviews the cut has no working day: the chain ends there.".to_owned()
        }
        Trouble::PublishPast { day: over } => {
            format!("The publish date was {}, and the film is not out.", day(over))
        }
        Trouble::CutPast { day: over } => {
            format!("The cut had to go out by {}. A later publish date moves it.", day(over))
        }
        Trouble::DoneAfterCut { done, by } => {
            format!("By the plan the piece is done {}; the cut must go out by {}.", day(done), day(by))
        }
        Trouble::PublishBeforeDone { done, publish } => {
            format!("The film goes out {}, before the piece is done, {}.", day(publish), day(done))
        }
        Trouble::DueBeforePublish { by, .. } => {
            format!("{due} is due {}, before the film goes out.", day(by))
        }
    }
}
