//! A zone's table by way of the IANA tz database, filled as the program fills it from the browser: an offset is asked for
//! every 15 days, and each difference is narrowed to the second.

use benchslate_core::measure::Zone;
use chrono::{DateTime, Offset as _, TimeZone};
use chrono_tz::Tz;

/// 1 January 2015 and 1 January 2037, UTC.
pub const FIRST: i64 = 1_420_070_400;
pub const LAST: i64 = 2_114_380_800;
const STEP: i64 = 15 * 86_400;

/// Seconds before or after UTC, as the library says it.
pub fn library_offset(tz: Tz, instant: i64) -> i32 {
    let utc = DateTime::from_timestamp(instant, 0).expect("in range").naive_utc();
    tz.offset_from_utc_datetime(&utc).fix().local_minus_utc()
}

/// The table of a zone.
pub fn probed(tz: Tz) -> Zone {
    let mut changes = vec![(i64::MIN, library_offset(tz, FIRST))];
    let mut from = FIRST;
    while from < LAST {
        let to = (from + STEP).min(LAST);
        let is = library_offset(tz, to);
        if is != library_offset(tz, from) {
            let (mut before, mut after) = (from, to);
            while after - before > 1 {
                let middle = before + (after - before) / 2;
                if library_offset(tz, middle) == is { after = middle } else { before = middle }
            }
            changes.push((after, is));
        }
        from = to;
    }
    // The table says how far it was asked.
    changes.push((LAST, library_offset(tz, LAST)));
    Zone { name: tz.name().to_owned(), changes }
}
