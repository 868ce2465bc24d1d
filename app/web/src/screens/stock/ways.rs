//! Own time counted in three ways: what a lot's sheet and a build's have alike.

use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{Answer, AnswerText, Tone},
        money_board::{Amounts, MoneyBoard, MoneyText},
        seg::{Choice, Seg},
        sheet::Keys,
        sum_row::{SumTotal, Sums},
    },
    screens::cost::{self, At, Row, Say},
    shell::desk::View,
    words::salvage as words,
};
use benchslate_core::{
    costing::{
        Gap, Path, Rule, Statement,
        present::{self, Level},
    },
    journal::Id,
    measure::Shown,
};

/// Ways to count own time, in the order of the set.
const FREE: usize = 0;
pub const AT_RATE: usize = 1;
const AN_HOUR: usize = 2;

/// The answer one way, and what stands on the keys of all three.
#[derive(Clone, PartialEq)]
pub struct Answered {
    label: &'static str,
    figure: String,
    lacks: bool,
    red: bool,
    figures: [String; 3],
    pub money: Option<MoneyLook>,
    /// The terms; taken away where there is no sum yet.
    pub rows: Vec<Row>,
    pub total: Option<(&'static str, String)>,
}

/// The figure that a way asks for, of own time free, at its rate, and an hour's pay.
pub fn chosen([free, at_rate, an_hour]: [&Statement; 3], way: usize) -> &Statement {
    match way {
        AN_HOUR => an_hour,
        AT_RATE => at_rate,
        _ => free,
    }
}

/// Worked out of the same three; `of`: the lot or build that they are of.
pub fn answered(say: Say, of: Id, three: [&Statement; 3], way: usize) -> Answered {
    let (tongue, minor) = (say.view.tongue, say.view.tongue.minor());
    let statement = chosen(three, way);
    // An hour's pay is worked out from the sum without own time.
    let summed = if way == AN_HOUR { chosen(three, FREE) } else { statement };
    let level = present::alone(summed, minor);
    let path = Path { steps: vec![summed.rule.step()] };
    let shown = present::alone(statement, minor).shown;
    let red = shown.is_some_and(Shown::is_negative);
    let size = |shown: Shown| tongue.shown(if shown.is_negative() { shown.negated() } else { shown });
    let total = level.shown.map(|shown| {
        let label = if shown.is_negative() { words::dearer_total() } else { words::saved_total() };
        (label, size(shown))
    });
    Answered {
        label: label(way, red),
        figure: shown.map_or_else(
            || lacks(statement).to_owned(),
            |shown| if way == AN_HOUR { tongue.shown(shown) } else { size(shown) },
        ),
        lacks: shown.is_none(),
        red,
        figures: three.map(|it| on_key(say.view, it)),
        money: money_look(say.view, &level, way),
        rows: cost::rows(say, &level, At { of, path: &path }),
        total,
    }
}

impl Answered {
    /// The three keys' words and figures.
    pub fn choices(&self) -> Vec<Choice> {
        let words = [words::free(), words::at_rate(), words::an_hour()];
        let choice =
            |(word, figure): (&str, &String)| Choice { label: word.to_owned(), note: Some(figure.clone()) };
        words.into_iter().zip(&self.figures).map(choice).collect()
    }

    /// The answer over the sheet; `note`: on what it is counted.
    pub fn head(&self, note: String) -> AnyView {
        let (label, figure) = (self.label.to_owned(), self.figure.clone());
        let text = AnswerText { label, note: Some(note), figure, lacks: self.lacks };
        let tone = if self.red { Tone::Red } else { Tone::Ink };
        view! { <Answer text tone/> }
    }

    /// The sum; nothing where there is none yet.
    pub fn sum(self) -> AnyView {
        if self.rows.is_empty() {
            return ().draw();
        }
        let total = self.total.map(|(label, figure)| view! { <SumTotal label=label.to_owned() figure/> });
        view! { <Sums>{self.rows.into_iter().map(cost::drawn).collect::<Vec<_>>()}{total}</Sums> }
    }
}

/// The set of three under the thumb.
pub fn keys(choices: Signal<Vec<Choice>>, way: RwSignal<usize>) -> AnyView {
    view! {
        <Keys class="low" lead=words::count_own_time().to_owned()>
            <Seg
                name=words::count_own_time().to_owned()
                choices
                chosen=way
                on_choose=Callback::new(move |at| way.set(at))
            />
        </Keys>
    }
}

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
fn label(way: usize, red: bool) -> &'static str {
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
fn on_key(view: &View, statement: &Statement) -> String {
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
fn money_look(view: &View, level: &Level, way: usize) -> Option<MoneyLook> {
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
