//! A plan to scale: when it is over half the time, four times in five and nineteen in twenty, against the date that can't
//! move; under it the work on its day, hatched by side, and what dries between.
use crate::dom::prelude::*;

use super::{
    hatch::{Hatch, Hatching},
    plain::Plain,
    stick_fraction::stick,
};

/// A date by which it is over, so likely.
#[derive(Clone, Default, PartialEq)]
pub struct DateRow {
    /// `80 %`.
    pub label: String,
    /// The date in words.
    pub says: String,
    /// Where it stands.
    pub at: f64,
    /// Where it stood before something was tried.
    pub was: Option<f64>,
    /// Past the date that can't move.
    pub late: bool,
}

/// The work of a day.
#[derive(Clone, PartialEq)]
pub struct PlanBar {
    pub at: f64,
    /// Of the highest.
    pub height: f64,
    pub film: bool,
    /// Beside it, where it is the last of its kind.
    pub word: Option<String>,
}

/// What stands on it. Places are 0 at its left end and 1 at its right.
#[derive(Clone, Default, PartialEq)]
pub struct PlanText {
    /// All of it, read aloud.
    pub name: String,
    pub dates: Vec<DateRow>,
    pub day: f64,
    pub weeks: Vec<(f64, String)>,
    pub rest: Vec<(f64, f64)>,
    pub bars: Vec<PlanBar>,
    pub dries: Vec<(f64, f64)>,
    pub now: f64,
    /// The date that can't move, and its words.
    pub fixed: Option<(f64, String)>,
    /// Words of the three lanes, and of now.
    pub lanes: [&'static str; 3],
    pub now_says: &'static str,
}

/// The drawing.
#[component]
pub fn PlanDrawing(text: PlanText) -> impl IntoView {
    let part = |share: f64| format!("{:.2}%", Plain(share * 100.0));
    let strip = |class: &'static str, from: f64, to: f64| {
        view! { <i class=class style:--at=part(from) style:--wide=part(to - from)></i> }
    };
    let weekends: Vec<AnyView> = text.rest.iter().map(|(from, to)| strip("rest", *from, *to)).collect();
    let fixed_at = text.fixed.as_ref().map(|it| it.0);
    let over = view! {
        <div class="over">
            {weekends}
            <i class="now" style:--at=part(text.now)></i>
            {fixed_at.map(|at| view! { <i class="fixed" style:--at=part(at)></i> })}
        </div>
    };
    let dates: Vec<AnyView> = text.dates.iter().map(date).collect();
    let week = |(at, says): &(f64, String)| {
        let says = says.clone();
        view! { <span style:--at=part(*at)>{says}</span> }
    };
    let weeks: Vec<AnyView> = text.weeks.iter().map(week).collect();
    let bar = |it: &PlanBar| {
        let kind = if it.film { Hatch::Film } else { Hatch::Piece };
        let word = it.word.clone().map(|word| view! { <span>{stick(&word)}</span> });
        view! {
            <b style:--at=part(it.at) style:--wide=part(text.day) style:--high=part(it.height)><Hatching kind/></b>
            {word.map(|word| view! { <em style:--at=part(it.at + text.day)>{word}</em> })}
        }
    };
    let lane =
        |film: bool| -> Vec<AnyView> { text.bars.iter().filter(|it| it.film == film).map(bar).collect() };
    let dries: Vec<AnyView> = text.dries.iter().map(|(from, to)| strip("dry", *from, *to)).collect();
    let [piece, dry, film] = text.lanes;
    let end = text.fixed.clone().map(|(at, says)| {
        let class = if at > 0.5 { "says before" } else { "says" };
        view! { <span class=class style:--at=part(at)>{stick(&says)}</span> }
    });
    view! {
        <figure class="plan-drawing" role="img" aria-label=text.name.clone()>
            {over}
            {dates}
            <p class="weeks"><b></b><span class="track">{weeks}</span></p>
            <p class="lane"><b>{piece}</b><span class="track">{lane(false)}</span></p>
            <p class="lane dries"><b>{dry}</b><span class="track">{dries}</span></p>
            <p class="lane"><b>{film}</b><span class="track">{lane(true)}</span></p>
            <p class="foot"><b>{text.now_says}</b><span class="track">{end}</span></p>
        </figure>
    }
}

fn date(row: &DateRow) -> AnyView {
    let part = |share: f64| format!("{:.2}%", Plain(share * 100.0));
    let was = row.was.map(|was| {
        let (from, to) = if was < row.at { (was, row.at) } else { (row.at, was) };
        view! { <i class="was" class:earlier=was < row.at style:--at=part(from) style:--wide=part(to - from)></i> }
    });
    // Where the arrow has no room for its words they stand past its point.
    let class = if row.at > 0.62 { "says" } else { "says after" };
    view! {
        <p class="date" class:late=row.late>
            <b>{row.label.clone()}</b>
            <span class="track">
                <i class="arrow" style:--wide=part(row.at)></i>
                {was}
                <span class=class style:--at=part(row.at)>{row.says.clone()}</span>
            </span>
        </p>
    }
}
