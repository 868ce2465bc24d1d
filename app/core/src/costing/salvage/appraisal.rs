//! Is it worth taking home? Three ways it may go, each against the same timber new.
//!
//! Bought instead = usable, in the measure in which new stock is sold, × price ÷ (1 − waste) × (1 + tax) + delivery. Cash =
//! asked + fee + kilometres × rate. Own time = hours × the rate of the first who works without wages. Saved = bought
//! instead − cash, and − own time; an hour pays (bought instead − cash) ÷ hours. Overhead is left out.
//! 52.8 usable × 6.50 ÷ 0.9 × 1.13 = 430.91; − 71.00 − 14 h × 28.00 = −32.09; an hour pays 25.71.
//! Source: our own rule, DEVELOPERS.md § Salvage. Not here: where the three ways come from (`history`).

use super::saving::goods;
use crate::{
    journal::{
        Shop,
        kinds::SettingKey,
        shop::{Case, Find},
    },
    measure::{Day, Dec, Money, Quantity, Ratio, Seconds, fixed},
};

/// What an appraisal lacks.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Missing {
    /// How much there is.
    Quantity,
    /// What is asked for it.
    Asked,
    /// What a kilometre costs.
    KmRate,
    /// What the same thing costs new.
    NewPrice,
    /// New stock is sold in the other measure, and it is known in one only.
    OtherMeasure,
    /// What an hour of the maker's own costs.
    Rate,
}

/// One way it may go. What can't be said is none.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Outcome {
    /// How much would be usable.
    pub usable: Option<Quantity>,
    /// The rest.
    pub culled: Option<Quantity>,
    /// Share usable.
    pub share: Ratio,
    /// How long it would take.
    pub time: Seconds,
    /// The same timber new.
    pub instead: Option<Money>,
    /// The maker's own time at its rate.
    pub own_time: Option<Money>,
    /// Saved, own time free; below zero: dearer.
    pub time_free: Option<Money>,
    /// Saved, own time at its rate.
    pub at_rate: Option<Money>,
    /// What an hour would pay; none also where it takes no time.
    pub an_hour: Option<Money>,
}

/// What it would come to.
#[derive(Clone, Debug, PartialEq)]
pub struct Appraisal {
    /// Badly, usually, well.
    pub outcomes: [Outcome; 3],
    /// Asked, fee and drive, whatever way it goes.
    pub cash: Option<Money>,
    /// Of that, the drive.
    pub drive: Option<Money>,
    /// Own time is counted at this rate an hour.
    pub rate: Option<Money>,
    /// What it lacks, each once.
    pub missing: Vec<Missing>,
}

/// A find, at the rates of the day on which it was looked at. The worked example stands in the header.
pub fn appraise(shop: &Shop, it: &Find) -> Appraisal {
    let mut missing = Vec::new();
    let mut need = |what: Missing, there: bool| {
        if !there && !missing.contains(&what) {
            missing.push(what);
        }
    };
    let drive = drive(shop, it);
    let rate = own_rate(shop, it.order.day);
    let sold = sold(it);
    need(Missing::Quantity, it.rough.is_some());
    need(Missing::NewPrice, it.new.is_some());
    need(Missing::OtherMeasure, sold.is_some() || it.rough.is_none() || it.new.is_none());
    need(Missing::Asked, it.asked.is_some());
    need(Missing::KmRate, drive.is_some());
    need(Missing::Rate, rate.is_some());
    let cash = it.asked.zip(drive).map(|(asked, drive)| asked.plus(it.fee).plus(drive));
    let outcomes = it.cases.map(|case| outcome(it, case, [cash, rate], sold));
    Appraisal { outcomes, cash, drive, rate, missing }
}

fn outcome(it: &Find, case: Case, [cash, rate]: [Option<Money>; 2], sold: Option<Quantity>) -> Outcome {
    let of = |whole: Quantity| {
        fixed::mul_div(whole.micros(), case.usable.micros(), fixed::SCALE).map(Quantity::from_micros)
    };
    let usable = it.rough.and_then(of);
    let instead = it
        .new
        .as_ref()
        .zip(sold.and_then(of))
        .and_then(|(new, sold)| Some(goods(sold, new)?.plus(new.delivery)));
    let Seconds(seconds) = case.time;
    let own_time = rate.and_then(|rate| fixed::mul_div(rate.micros(), seconds.into(), 3600));
    let own_time = own_time.map(Money::from_micros);
    let time_free = instead.zip(cash).map(|(instead, cash)| instead.minus(cash));
    Outcome {
        usable,
        culled: it.rough.zip(usable).map(|(all, usable)| all.minus(usable)),
        share: case.usable,
        time: case.time,
        instead,
        own_time,
        time_free,
        at_rate: time_free.zip(own_time).map(|(saved, own)| saved.minus(own)),
        an_hour: time_free
            .and_then(|saved| fixed::mul_div(saved.micros(), 3600, seconds.into()).map(Money::from_micros)),
    }
}

/// All of it in the measure in which new stock is sold.
fn sold(it: &Find) -> Option<Quantity> {
    let same = it.new.as_ref().is_none_or(|new| new.basis == it.basis);
    if same { it.rough } else { it.other_measure }
}

/// No kilometres cost nothing, whether or not there is a rate.
fn drive(shop: &Shop, it: &Find) -> Option<Money> {
    if it.km.is_zero() {
        return Some(Money::ZERO);
    }
    let rate = Dec::parse(shop.settings.on(SettingKey::KmRate, it.order.day)?).ok()?.money()?;
    fixed::mul_div(it.km.micros(), rate.micros(), fixed::SCALE).map(Money::from_micros)
}

/// The rate of the first who works without wages and has one.
fn own_rate(shop: &Shop, day: Day) -> Option<Money> {
    shop.people.values().filter(|person| !person.paid).find_map(|person| person.rate_on(day))
}
