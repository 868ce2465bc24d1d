//! When a thing happened: a day, or an instant with the offset in force where it was written.

use crate::measure::{Day, Instant, When, Zone};
use serde::{Deserialize, Deserializer, Serialize, de::Error};

/// `"2026-11-20"` or `"2026-11-20T08:05:00-05:00"`. Stock formulas and dated rates follow this, never
/// the stamp: a purchase typed two days late changes nothing if `on` is right.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(untagged)]
pub enum On {
    /// A whole day, no time given.
    Day(Day),
    /// A moment, to the second.
    At(When),
}

impl On {
    /// The local day, cut in the shop's zone.
    pub fn day(&self, zone: &Zone) -> Day {
        match self {
            On::Day(day) => *day,
            On::At(when) => zone.day(when.instant),
        }
    }

    /// The moment, where one was given.
    pub fn instant(&self) -> Option<Instant> {
        match self {
            On::Day(_) => None,
            On::At(when) => Some(when.instant),
        }
    }
}

impl<'de> Deserialize<'de> for On {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<On, D::Error> {
        let text = <std::borrow::Cow<'de, str>>::deserialize(from)?;
        let day = Day::parse(&text).map(On::Day);
        day.or_else(|_| When::parse(&text).map(On::At))
            .map_err(|_| D::Error::custom("neither a day nor an instant"))
    }
}
