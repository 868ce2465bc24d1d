//! Own time counted in three ways: what a lot's sheet and a build's have alike.

use crate::dom::prelude::*;
use crate::{
    parts::{
        money_board::{Amounts, MoneyBoard, MoneyText},
        seg::Choice,
    },
    screens::cost,
    shell::desk::View,
    words::salvage as words,
};
use benchslate_core::costing::{Gap, Rule, Statement, present::Level};

/// Ways to count own time, in the order of the set.
pub const AT_RATE: usize = 1;
pub const AN_HOUR: usize = 2;

/// The board of money in plain words.
#[derive(Clone, PartialEq)]
pub struct MoneyLook {
    amounts: Amounts,
    instead: String,
    cash: String,
    own_time: String,
    outcome: String,
}

/// What the figure is called.
pub fn label(way: usize, red: bool) -> &'static str {
    match (way, red) {
        (AN_HOUR, _) => words::hour_paid(),
        (_, true) => words::dearer(),
        (_, false) => words::saved(),
    }
}

/// In its place, where it can't be said.
pub fn lacks(statement: &Statement) -> &'static str {
    let no_hours = |gap: &Gap| matches!(gap, Gap::NoHours { .. } | Gap::NoOwnHours { .. });
    let nothing_drawn = |gap: &Gap| matches!(gap, Gap::NothingDrawn { .. });
    if statement.gaps.iter().any(nothing_drawn) {
        words::nothing_drawn()
    } else if statement.gaps.iter().any(no_hours) {
        words::no_hours()
    } else {
        cost::missing(statement)
    }
}

/// On the key that counts time that way.
pub fn on_key(view: &View, statement: &Statement) -> String {
    match statement.money() {
        Some(money) => view.tongue.money(money),
        None if statement
            .gaps
            .iter()
            .any(|gap| matches!(gap, Gap::NoHours { .. } | Gap::NoOwnHours { .. })) =>
        {
            words::no_hours().to_owned()
        }
        None => words::no_figure().to_owned(),
    }
}

/// None where nothing can be drawn: the price of new is missing, or nothing was drawn.
pub fn money_look(view: &View, level: &Level, way: usize) -> Option<MoneyLook> {
    let statement = level.statement;
    let shown = level.shown?;
    let of = |is: fn(&Rule) -> bool| {
        let at = statement.parts.iter().position(|part| part.statement().is_some_and(|it| is(&it.rule)))?;
        Some((statement.parts.get(at)?.value(), (*level.parts.get(at)?)?))
    };
    let instead = of(|rule| matches!(rule, Rule::BoughtInstead { .. } | Rule::BuildInstead))?;
    let cash = of(|rule| matches!(rule, Rule::MoneyAndVehicle { .. } | Rule::BuildTook))?;
    let own = of(|rule| matches!(rule, Rule::OwnTime { .. } | Rule::BuildOwnTime { .. }));
    let tongue = view.tongue;
    let outcome = if shown.is_negative() {
        words::dearer_by(&tongue.shown(shown.negated()))
    } else {
        words::saved_so_much(&tongue.shown(shown))
    };
    Some(MoneyLook {
        amounts: Amounts {
            instead: cost::size(instead.0),
            cash: cost::size(cash.0),
            own_time: own.map_or(0.0, |own| cost::size(own.0)),
        },
        instead: words::bought_instead(&tongue.shown(instead.1)),
        cash: words::cash(&tongue.shown(cash.1)),
        own_time: own
            .filter(|_| way == AT_RATE)
            .map(|own| words::own_time(&tongue.shown(own.1)))
            .unwrap_or_default(),
        outcome,
    })
}

/// The three keys.
pub fn choices(figures: &[String; 3]) -> Vec<Choice> {
    let words = [words::free(), words::at_rate(), words::an_hour()];
    let choice =
        |(word, figure): (&str, &String)| Choice { label: word.to_owned(), note: Some(figure.clone()) };
    words.into_iter().zip(figures).map(choice).collect()
}

/// The board of money, drawn.
pub fn money(look: MoneyLook) -> AnyView {
    let mut name = look.instead.clone();
    for more in [&look.cash, &look.own_time, &look.outcome] {
        if !more.is_empty() {
            name.push_str("; ");
            name.push_str(more);
        }
    }
    let text = MoneyText {
        instead: look.instead,
        cash: look.cash,
        own_time: look.own_time,
        outcome: look.outcome,
        name,
    };
    view! { <MoneyBoard amounts=look.amounts text/> }
}
