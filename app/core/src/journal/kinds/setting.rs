//! A shop-wide choice, from a day on.

use crate::{journal::On, measure::Day};
use serde::{Deserialize, Serialize};

/// Which choice.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum SettingKey {
    /// ISO 4217 code.
    Currency,
    /// Name of the time zone that days are cut in (IANA).
    Zone,
    /// `metric` or `inch`: which units come first.
    Units,
    /// First day of the week, 1 Monday to 7 Sunday (ISO 8601).
    WeekStart,
    /// Money a kilometre.
    KmRate,
    /// Sales tax as a share, offered first in forms: `0.13`.
    TaxRate,
    /// What the shop is called.
    ShopName,
    /// Money a kWh.
    KwhPrice,
    /// Where power is kept: `tools` (in their rates) or `month` (in a monthly cost).
    PowerIn,
    /// Person-hours of a normal month, on builds and lots.
    NormalHours,
    /// Of these, hours for the film.
    NormalFilmHours,
    /// How `both` is shared: `hours` (direct hours of piece and film), `income` (what each side is expected to bring
    /// in), or the film's share, `0.4`.
    BothKey,
    /// By how much filming slows work down, as a share: `0.25`.
    SlowDown,
    /// Real seconds that a second of footage takes at the camera: `3`.
    ShootingSeconds,
    /// How stock of items is drawn: `moving_average`, `first_in_first_out`; none: the former.
    StockFormula,
    /// What the finest mark that the maker reads stands under: `16`.
    SmallestFraction,
    /// What stands between the last cut and the publish date, a line each (`planning::publishing::leads`).
    PublishLeads,
    /// Builds that are planned before all others, in this order: ids, with commas.
    BuildOrder,
}

/// The value is text; `settings` reads it by key, and an odd one counts as not set.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Setting {
    /// When it was chosen.
    pub on: On,
    /// Which choice.
    pub key: SettingKey,
    /// The value as text.
    pub value: String,
    /// In force from this day; none: from the beginning.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub from: Option<Day>,
}
