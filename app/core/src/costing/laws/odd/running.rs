//! Odd bodies of what runs the shop: receipts, tools, monthly costs, income, finished items, closings, photos.

use super::{bearer, entry, maybe, moment, number, on};
use crate::{
    journal::{
        Body, Id,
        kinds::{
            self, BuildState, DaysOf, DueLead, Frozen, HandedOver, IncomeKind, Received, SettingKey, Share,
            Side, State, StoredParts, ToolFrom,
        },
        stages::standing_id,
    },
    measure::Day,
};
use proptest::prelude::*;

pub(super) fn side() -> impl Strategy<Value = Side> {
    prop::sample::select(&[Side::Piece, Side::Film, Side::Both][..])
}

fn day() -> impl Strategy<Value = Day> {
    let days = &["1900-01-01", "2026-02-09", "2026-02-10", "2026-02-11", "2200-12-31"][..];
    prop::sample::select(days).prop_map(|day| Day::parse(day).unwrap())
}

fn stage() -> impl Strategy<Value = Id> {
    (1..30_u8).prop_map(standing_id)
}

fn count() -> impl Strategy<Value = u32> {
    prop_oneof![Just(0), Just(1), 0..40_u32, Just(u32::MAX)]
}

fn shares() -> impl Strategy<Value = Vec<Share>> {
    let share = (bearer(), prop_oneof![0..5_u32, any::<u32>()]);
    prop::collection::vec(share.prop_map(|(bearer, parts)| Share { bearer, parts }), 0..3)
}

/// Choices with a number where there should be one, and without.
pub(super) fn setting() -> impl Strategy<Value = Body> {
    let keys = &[
        SettingKey::KmRate,
        SettingKey::KwhPrice,
        SettingKey::PowerIn,
        SettingKey::NormalHours,
        SettingKey::NormalFilmHours,
        SettingKey::BothKey,
        SettingKey::SlowDown,
        SettingKey::StockFormula,
        SettingKey::SmallestFraction,
        SettingKey::Currency,
    ][..];
    let words = prop::sample::select(&["income", "month", "hours", "", "JPY"][..]).prop_map(String::from);
    let value = prop_oneof![number().prop_map(|it| it.to_string()), words];
    (on(), prop::sample::select(keys), value, prop::option::of(day()))
        .prop_map(|(on, key, value, from)| kinds::Setting { on, key, value, from }.into())
        .boxed()
}

fn money() -> impl Strategy<Value = Body> {
    let amounts = (maybe(), maybe(), maybe(), any::<bool>(), maybe(), prop::option::of(bearer()));
    let receipt =
        (on(), amounts).prop_map(|(on, (freight, discount, tax, tax_back, total, bearer))| -> Body {
            kinds::Receipt { on, whence: None, freight, discount, tax, tax_back, total, bearer, abroad: None }
                .into()
        });
    let by_product = (on(), bearer(), number()).prop_map(|(on, of, amount)| -> Body {
        kinds::ByProduct { on, of, what: String::new(), amount }.into()
    });
    let monthly = (on(), number(), side(), prop::option::of(day()), prop::option::of(day()), maybe())
        .prop_map(|(on, a_month, side, from, to, tools_kwh)| -> Body {
            kinds::MonthlyCost { on, what: String::new(), a_month, side, from, to, tools_kwh }.into()
        });
    let received = (day(), number(), maybe(), maybe()).prop_map(|(on, amount, tax, fee)| Received {
        on,
        amount,
        tax,
        fee,
    });
    let came = (maybe(), prop::collection::vec(received, 0..3), any::<bool>());
    let income = (on(), side(), shares(), came).prop_map(
        |(on, side, shares, (expected, received, settled))| -> Body {
            let (kind, what, due) = (IncomeKind::Other, None, None);
            kinds::Income { on, kind, side, what, shares, expected, due, received, settled }.into()
        },
    );
    prop_oneof![2 => receipt, 1 => by_product, 2 => monthly, 3 => income].boxed()
}

fn tools() -> impl Strategy<Value = Body> {
    let duty = (stage(), number()).prop_map(|(stage, share)| kinds::Duty { stage, share });
    let left = (day(), number()).prop_map(|(from, hours)| kinds::LifeLeft { from, hours });
    let cost = (maybe(), maybe(), maybe(), maybe());
    let power = (maybe(), maybe(), maybe());
    let lists = (prop::collection::vec(duty, 0..4), prop::collection::vec(left, 0..3));
    let from = prop::sample::select(&[ToolFrom::Bought, ToolFrom::Supplied, ToolFrom::Lent][..]);
    let tool = (on(), cost, power, lists, (any::<bool>(), from, prop::option::of(day()))).prop_map(
        |(on, (price, resale, life, upkeep), (kw, load, before), (duty, left), (rolls, from, gone))| -> Body {
            let name = String::new();
            kinds::Tool {
                on,
                name,
                price,
                resale,
                life,
                upkeep,
                kw,
                load,
                before,
                duty,
                rolls,
                from,
                left,
                gone,
                by: None,
                link: None,
            }
            .into()
        },
    );
    let ran =
        (on(), entry(), bearer(), stage(), number()).prop_map(|(on, tool, bearer, stage, hours)| -> Body {
            kinds::ToolHours { on, tool, bearer, stage, hours }.into()
        });
    let blade = (on(), entry(), number(), number(), prop::option::of(day())).prop_map(
        |(on, tool, cost, life, off)| -> Body {
            kinds::Blade { on, tool, what: String::new(), cost, life, off }.into()
        },
    );
    prop_oneof![3 => tool, 2 => ran, 2 => blade].boxed()
}

fn parts() -> impl Strategy<Value = StoredParts> {
    (maybe(), maybe(), maybe(), maybe(), maybe()).prop_map(|(money, own, overhead, own_seconds, paid)| {
        StoredParts { money, own, overhead, own_seconds, paid, ..StoredParts::default() }
    })
}

fn items() -> impl Strategy<Value = Body> {
    let made = (on(), entry(), count(), prop::collection::vec(number(), 0..3), maybe()).prop_map(
        |(on, build, good, spoiled, scrap)| -> Body {
            kinds::Made { on, build, good, spoiled, scrap }.into()
        },
    );
    let how = prop::sample::select(&[HandedOver::Sold, HandedOver::Given, HandedOver::Kept][..]);
    let handed = (on(), entry(), count(), how, prop::option::of(entry())).prop_map(
        |(on, build, count, how, income)| -> Body {
            kinds::HandOver { on, build, count, how, income }.into()
        },
    );
    let film = (on(), entry(), maybe(), maybe()).prop_map(|(on, build, footage, finished)| -> Body {
        kinds::Film { on, build, footage, finished, published: None, address: None }.into()
    });
    let end = (on(), entry()).prop_map(|(on, build)| -> Body { kinds::SeriesEnd { on, build }.into() });
    let frozen = (entry(), number(), parts(), parts())
        .prop_map(|(draw, quantity, fetched, reclaimed)| Frozen { draw, quantity, fetched, reclaimed });
    let states = &[State::Begun, State::Paused, State::Closed, State::Closed, State::Reopened][..];
    let state = (on(), entry(), prop::sample::select(states), prop::collection::vec(frozen, 0..4))
        .prop_map(|(on, build, state, frozen)| -> Body { BuildState { on, build, state, frozen }.into() });
    let minutes = || prop::option::of(any::<u32>());
    let drying = (on(), entry(), prop::option::of(entry()), minutes(), any::<u32>()).prop_map(
        |(on, stretch, item, held, next)| -> Body { kinds::Drying { on, stretch, item, held, next }.into() },
    );
    let photo = (on(), prop::option::of(entry()), prop::option::of(bearer()), any::<u32>()).prop_map(
        |(on, entry, bearer, bytes)| -> Body {
            let (hash, media, caption) = (String::new(), String::new(), None);
            kinds::Photo { on, entry, bearer, hash, media, width: bytes, height: 0, bytes, caption }.into()
        },
    );
    let buy =
        (on(), prop::option::of(entry()), maybe(), prop::option::of(entry()), prop::option::of(entry()))
            .prop_map(|(on, item, quantity, for_build, bought)| -> Body {
                kinds::BuyLine {
                    on,
                    item,
                    what: String::new(),
                    quantity,
                    unit: None,
                    price: quantity,
                    for_build,
                    bought,
                }
                .into()
            });
    let publishing = publishing();
    prop_oneof![1 => publishing, 1 => buy, 2 => made, 2 => handed, 3 => state, 1 => drying, 1 => photo, 1 => film, 1 => end]
        .boxed()
}

/// Chapters, those outside, and what is owed: dues that name each other among them.
fn publishing() -> impl Strategy<Value = Body> {
    let chapter = (on(), entry(), any::<u32>()).prop_map(|(on, build, at)| -> Body {
        kinds::Chapter { on, build, title: String::new(), at }.into()
    });
    let outsider = (on(), prop::collection::vec(0..9_u8, 0..4), prop::collection::vec(day(), 0..3)).prop_map(
        |(on, week, off)| -> Body {
            kinds::Outsider { on, name: String::new(), kind: kinds::OutsiderKind::Sponsor, week, off }.into()
        },
    );
    let of = prop::sample::select(&[DaysOf::Calendar, DaysOf::Working, DaysOf::Theirs][..]);
    let lead = (any::<i32>(), of, any::<bool>()).prop_map(|(days, of, later)| DueLead { days, of, later });
    let when = (prop::option::of(day()), prop::option::of(lead), prop::option::of(day()));
    let due = (on(), entry(), when, prop::option::of(entry()), prop::option::of(entry())).prop_map(
        |(on, build, (day, lead, done), after, outsider)| -> Body {
            let (what, words) = (kinds::DueWhat::Review, None);
            kinds::Due { on, build, what, words, day, lead, after, outsider, done }.into()
        },
    );
    prop_oneof![chapter, outsider, due]
}

/// Anything about running the shop.
pub(super) fn running() -> impl Strategy<Value = Body> {
    prop_oneof![3 => money(), 3 => tools(), 3 => items(), 1 => setting()].boxed()
}

/// Spans of the camera, ends before starts among them.
pub(super) fn spans() -> impl Strategy<Value = Vec<kinds::Span>> {
    let span = (moment(), prop::option::of(moment())).prop_map(|(from, to)| kinds::Span { from, to });
    prop::collection::vec(span, 0..3)
}
