//! The kinds of entry, a file each: what is stored. Working facts are apart, in `shop`.
//!
//! A new kind: its file, one line in `kinds!` below; the matches without a catch-all point out the rest.
//! All money is in the shop's currency, all decimals are strings as typed.

mod abroad;
mod bearer;
mod blade;
mod build;
mod build_state;
mod buy_line;
mod by_product;
mod card_copied;
mod chapter;
mod cull;
mod draw;
mod drying;
mod due;
mod expense;
mod film;
mod find;
mod free_day;
mod hand_over;
mod income;
mod item;
mod lot;
mod made;
mod monthly_cost;
mod note;
mod outsider;
mod part;
mod person;
mod photo;
mod receipt;
mod resource;
mod retired;
mod same;
mod series_end;
mod setting;
mod shelf;
mod shot;
mod sort;
mod stage;
mod step;
mod stretch;
mod take;
mod tool;
mod tool_hours;
mod trip;

pub use abroad::Abroad;
pub use bearer::{Bearer, Side, Source};
pub use blade::Blade;
pub use build::Build;
pub use build_state::{BuildState, Frozen, State, StoredParts};
pub use buy_line::BuyLine;
pub use by_product::ByProduct;
pub use card_copied::CardCopied;
pub use chapter::Chapter;
pub use cull::Cull;
pub use draw::Draw;
pub use drying::Drying;
pub use due::{DaysOf, Due, DueLead, DueWhat};
pub use expense::Expense;
pub use film::Film;
pub use find::{Case, Cases, Find};
pub use free_day::FreeDay;
pub use hand_over::{HandOver, HandedOver};
pub use income::{Income, IncomeKind, Received};
pub use item::{Item, Use};
pub use lot::{Basis, Lot, Mark, NewStock, Origin, SuppliedBy};
pub use made::Made;
pub use monthly_cost::MonthlyCost;
pub use note::Note;
pub use outsider::{Outsider, OutsiderKind, monday_to_friday};
pub use part::{Extent, Part};
pub use person::{FreeHours, Person, Rate, Window};
pub use photo::Photo;
pub use receipt::Receipt;
pub use resource::Resource;
pub use retired::Retired;
pub use same::Same;
pub use series_end::SeriesEnd;
pub use setting::{Setting, SettingKey};
pub use shelf::{Shelf, ShelfState};
pub use shot::{Shot, ShotWindow};
pub use sort::{Link, Sort};
pub use stage::{Role, Stage};
pub use step::{After, Need, Step};
pub use stretch::{Span, Stretch};
pub use take::Take;
pub use tool::{Duty, LifeLeft, Tool, ToolFrom};
pub use tool_hours::ToolHours;
pub use trip::{Share, Trip};

use super::On;
use serde_json::value::RawValue;

/// The newest form of a body that this version writes and reads whole.
pub const BODY_VERSION: u32 = 1;

macro_rules! kinds {
    ($($name:ident $code:literal $says:literal)*) => {
        /// A kind of entry.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Kind { $(#[doc = $says] $name,)* }

        /// What an entry says, by kind.
        #[derive(Clone, Debug, PartialEq)]
        pub enum Body { $(#[doc = $says] $name($name),)* }

        impl Kind {
            /// Every kind, in the order of the list.
            pub const ALL: &'static [Kind] = &[$(Kind::$name,)*];

            /// The name under which it is stored.
            pub fn code(self) -> &'static str {
                match self { $(Kind::$name => $code,)* }
            }

            /// The kind stored under this name.
            pub fn from_code(code: &str) -> Option<Kind> {
                match code { $($code => Some(Kind::$name),)* _ => None }
            }
        }

        impl Body {
            /// Its kind.
            pub fn kind(&self) -> Kind {
                match self { $(Body::$name(_) => Kind::$name,)* }
            }

            /// When it happened.
            pub fn on(&self) -> On {
                match self { $(Body::$name(body) => body.on,)* }
            }
        }

        pub(super) fn decode(kind: Kind, raw: &RawValue) -> Option<Body> {
            match kind { $(Kind::$name => crate::journal::object::from_raw(raw).map(Body::$name),)* }
        }

        pub(super) fn encode(body: &Body) -> Option<Box<RawValue>> {
            match body { $(Body::$name(body) => serde_json::value::to_raw_value(body).ok(),)* }
        }

        $(impl From<$name> for Body { fn from(body: $name) -> Body { Body::$name(body) } })*
    };
}

kinds! {
    Setting "setting" "A shop-wide choice, from a day on."
    Person "person" "Somebody who works here, with dated rates."
    Stage "stage" "A kind of work."
    Build "build" "One job: a piece or a batch of like pieces, and the film of it."
    Stretch "stretch" "An interval of work; without an end it is a clock."
    Item "item" "Something kept in stock."
    Lot "lot" "One acquisition: so much, from there, for so much."
    Trip "trip" "A drive, shared among what it was for."
    Sort "sort" "What was found usable in a salvaged lot, and what was thrown out."
    Draw "draw" "Stock taken into a build, or coming back from it."
    Shelf "shelf" "What was found on the shelf."
    Expense "expense" "Money paid for one bearer directly."
    Note "note" "Words."
    Receipt "receipt" "What was paid at a till; its lines may come later."
    ByProduct "by_product" "What a lot or a build yielded beside what it was for."
    Tool "tool" "A thing that wears and is used again."
    ToolHours "tool_hours" "Run hours of a tool, known better than by the share of the stage."
    Blade "blade" "A blade or bit fitted to a tool."
    MonthlyCost "monthly_cost" "What the shop costs every month."
    Income "income" "Money that comes in."
    Made "made" "Finished items."
    HandOver "hand_over" "Items leaving."
    BuildState "build_state" "A build that is paused, closed, reopened."
    Drying "drying" "How long a glue-up or a coat needs after the work on it."
    Photo "photo" "A picture, its bytes beside the journal."
    Retired "retired" "A thing that is not offered any more, or is again."
    Same "same" "An item that is another one."
    Film "film" "The film of a build."
    SeriesEnd "series_end" "No more of a run will be made."
    Step "step" "A piece of planned work."
    BuyLine "buy_line" "Something that is to be bought."
    Cull "cull" "Timber of a salvaged lot, thrown out by itself."
    Find "find" "Timber that was looked at and is not home."
    Part "part" "So many like pieces of a build."
    Resource "resource" "What there is a count of, and steps take."
    FreeDay "free_day" "A day that is not as its weekday says."
    Shot "shot" "A planned piece of footage."
    Take "take" "One try at a shot."
    CardCopied "card_copied" "The camera's card was copied."
    Chapter "chapter" "A chapter of the film of a build."
    Outsider "outsider" "Somebody outside the shop who is waited for."
    Due "due" "Something that a build owes somebody."
}
