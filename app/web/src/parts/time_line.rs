//! The whole of a build on one line of time, to scale: work as bars over the days, the camera's days, what dried, gaps,
//! milestones as numbered ticks.
use crate::dom::prelude::*;

use super::dim::Dim;
use super::hatch::DashedEdge;
use super::plain::Plain;

/// A piece of the line: where it begins and how wide it is, 0 to 1.
#[derive(Clone, Copy, Default, PartialEq)]
pub struct At {
    pub from: f64,
    pub wide: f64,
}

/// A day that was worked: shares of the longest day.
#[derive(Clone, Copy, Default, PartialEq)]
pub struct DayBar {
    pub at: At,
    pub piece: f64,
    pub film: f64,
}

/// All of it. Words stand beside it; the drawing is hidden from a screen reader.
#[derive(Clone, Default, PartialEq)]
pub struct LineText {
    /// On the line over it.
    pub whole: String,
    pub first: String,
    pub last: String,
    pub days: Vec<DayBar>,
    pub shoots: Vec<At>,
    pub dried: Vec<At>,
    /// With its words, where there is room for them.
    pub gaps: Vec<(At, Option<String>)>,
    pub marks: Vec<f64>,
    /// Names of the rows: work, camera, drying, gaps.
    pub rows: [&'static str; 4],
}

#[component]
pub fn TimeLine(text: LineText) -> impl IntoView {
    let [work, camera, drying, gap] = text.rows;
    let day = |it: DayBar| {
        let part = |share: f64, class: &'static str| {
            let high = format!("{:.2}%", Plain(share * 100.0));
            (share > 0.0).then(|| view! { <span class=class style:block-size=high></span> })
        };
        placed("day-bar", it.at, view! { {part(it.film, "film")}{part(it.piece, "piece")} })
    };
    let days: Vec<AnyView> = text.days.into_iter().map(day).collect();
    let shoots: Vec<AnyView> = text.shoots.into_iter().map(|at| placed("shot-day", at, ())).collect();
    let dried: Vec<AnyView> =
        text.dried.into_iter().map(|at| placed("dried", at, view! { <DashedEdge/> })).collect();
    let gaps = text
        .gaps
        .into_iter()
        .map(|(at, says)| placed("gap", at, says.map(|says| view! { <Dim text=Signal::stored(says)/> })));
    let gaps: Vec<AnyView> = gaps.collect();
    let mark = |(at, share): (usize, f64)| {
        let number = (at + 1).to_string();
        let class = if share > 0.9 { "late" } else { "milestone" };
        placed(class, At { from: share, wide: 0.0 }, view! { <b>{number}</b> })
    };
    let marks: Vec<AnyView> = text.marks.into_iter().enumerate().map(mark).collect();
    let row = |class: &'static str, name: &'static str, inner: Vec<AnyView>| {
        let none = inner.is_empty();
        (!none).then(|| view! { <div class=format!("row {class}")><em>{name}</em>{inner}</div> })
    };
    view! {
        <div class="time-line" aria-hidden="true">
            <Dim text=Signal::stored(text.whole)/>
            <div class="rows">
                <div class="marks">{marks}</div>
                {row("work", work, days)}
                {row("camera", camera, shoots)}
                {row("drying", drying, dried)}
                {row("gaps", gap, gaps)}
            </div>
            <p class="ends"><span>{text.first}</span>" "<span>{text.last}</span></p>
        </div>
    }
}

fn placed(class: &'static str, at: At, inner: impl Draw + 'static) -> AnyView {
    let per = |share: f64| format!("{:.3}%", Plain(share * 100.0));
    view! { <i class=class style:inset-inline-start=per(at.from) style:inline-size=per(at.wide)>{inner}</i> }
}
