//! Planning: have I got the time? Steps over real calendars, the chance of a date, what would make it surer, what holds
//! it up; what is to be bought; the way back from a publish date, and what is owed to a sponsor.
//!
//! [`asking`] says what is planned; [`Plan::of`] places every step of every open build over free windows
//! ([`calendar`]); [`Plan::chance`] gives a [`Chance`] that simulates finishes, so many at a call; [`Plan::surer`] gives a
//! [`Surer`] that does the same for each thing that would help; [`Plan::slack`] and [`Plan::holds_up`] explain. What is
//! wrong with a plan is a [`Trouble`], and the rest is planned all the same.
//! From the network up: `network` (what is planned) and `hours` → `place` (one schedule) → `search` (the order) →
//! `schedule`. [`bare`] is the same search without people and calendars: `examples/schedule_psplib` measures it.
//!
//! Never: money worked out, a clock or a random source read. Kept by: `tidy` (arrows) and the lints.
//! Floating point: in `draws`, `hours`, `chance` and `spread`, for probabilities alone.

pub mod asked;
pub mod asking;
pub mod bare;
pub mod buying;
pub mod calendar;
pub mod candidates;
pub mod chance;
pub mod drawn;
pub mod draws;
pub mod held_up;
pub mod history;
mod hours;
#[cfg(test)]
mod laws;
mod network;
mod place;
pub mod publishing;
pub mod schedule;
mod search;
pub mod slack;
pub mod spread;
pub mod starters;
pub mod surer;
pub mod taken_over;
pub mod taking;
pub mod trouble;
pub mod turns;
mod two_dates;

pub use asked::{Asked, ShorterFilm, shorter_film};
pub use asking::{Asking, Filming, Trial, open_builds};
pub use calendar::{Calendar, longer_than_a_window};
pub use candidates::Candidates;
pub use chance::{Chance, Odds};
pub use drawn::{DayWork, Drawn};
pub use held_up::Cause;
pub use schedule::{Finish, Held, Placed, Plan};
pub use slack::{Gap, Link, Slack, Wait};
pub use spread::Spread;
pub use surer::{Helped, Question, Surer, shorter};
pub use trouble::Trouble;
