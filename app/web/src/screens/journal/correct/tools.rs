//! Tools, blades, run hours and monthly costs: new, and put right.

use super::{
    Choices, DAY, How, Spec, Typed, dec, rows,
    rows::{Rows, field},
    tick,
};
use crate::dom::prelude::*;
use crate::{
    parts::{field::Cells, key::Key, sum_row::Group},
    screens::{hours::choices, stock::form::Form},
    shell::Desk,
    words::{
        journal::{self as words, Label},
        tools as said,
    },
};
use benchslate_core::{
    journal::{
        Id,
        kinds::{Blade, Duty, LifeLeft, MonthlyCost, Side, Tool, ToolHours},
    },
    measure::{Dec, number},
};

const MOST_NAME: usize = 80;
/// Letters of a link, at most.
pub const MOST_LINK: usize = 300;
/// Where a form keeps the stages at which a tool runs: their ids, a space between them.
const AT: &str = "runs-at";

pub const TOOL: [Spec; 13] = [
    ("name", Label::Name, How::Words),
    ("price", Label::Price, How::Money),
    ("resale", Label::Resale, How::Money),
    ("life", Label::Life, How::Hours),
    ("upkeep", Label::Upkeep, How::Money),
    ("kw", Label::Power, How::Number),
    ("load", Label::Load, How::Part),
    ("before", Label::Before, How::Hours),
    ("come-by", Label::ComeBy, How::OneOf(Choices::ToolFrom)),
    ("by", Label::GivenBy, How::OneOf(Choices::Outsider)),
    ("link", Label::OwnLink, How::Words),
    (DAY, Label::Day, How::Day),
    ("rolls", Label::Rolls, How::Tick),
];

pub const LEFT: Rows = Rows {
    count: "lefts",
    title: said::life_changed(),
    more: said::life_changes(),
    cells: &[("left", Label::HoursLeft, How::Hours, ""), ("left-from", Label::From, How::Day, "")],
};

pub const BLADE: [Spec; 6] = [
    ("what", Label::What, How::Words),
    ("tool", Label::Tool, How::OneOf(Choices::Tool)),
    ("cost", Label::Price, How::Money),
    ("life", Label::Life, How::Hours),
    (DAY, Label::Fitted, How::Day),
    ("off", Label::Off, How::Day),
];

pub const TOOL_HOURS: [Spec; 5] = [
    ("hours", Label::Ran, How::Hours),
    ("tool", Label::Tool, How::OneOf(Choices::Tool)),
    ("stage", Label::Stage, How::OneOf(Choices::Stage)),
    (DAY, Label::Day, How::Day),
    ("bearer", Label::For, How::Bearer),
];

pub const MONTHLY: [Spec; 6] = [
    ("what", Label::What, How::Words),
    ("a-month", Label::AMonth, How::Money),
    ("from", Label::From, How::Day),
    ("to", Label::Until, How::Day),
    ("bill", Label::Bill, How::Number),
    ("film", Label::FilmOnly, How::Tick),
];

pub fn fill_tool(it: &Tool) -> Vec<(String, String)> {
    let mut filled: Vec<(String, String)> = super::owned(vec![
        ("name", it.name.clone()),
        ("price", dec(it.price)),
        ("resale", dec(it.resale)),
        ("life", dec(it.life)),
        ("upkeep", dec(it.upkeep)),
        ("kw", dec(it.kw)),
        ("load", it.load.map(number::part_typed).unwrap_or_default()),
        ("before", dec(it.before)),
        ("come-by", super::chosen::tool_from_code(it.from)),
        ("by", it.by.map(|id| id.to_string()).unwrap_or_default()),
        ("link", it.link.clone().unwrap_or_default()),
        ("rolls", tick(it.rolls)),
        ("lefts", if it.left.is_empty() { String::new() } else { it.left.len().to_string() }),
    ]);
    let at: Vec<String> = it.duty.iter().map(|duty| duty.stage.to_string()).collect();
    filled.push((AT.to_owned(), at.join(" ")));
    filled.extend(it.duty.iter().map(|duty| (share_field(duty.stage), number::part_typed(duty.share))));
    for (at, left) in it.left.iter().enumerate() {
        filled.push((field("left", at), left.hours.plain()));
        filled.push((field("left-from", at), left.from.to_string()));
    }
    filled
}

pub fn tool(typed: &Typed, before: &Tool) -> Tool {
    let mut left = Vec::new();
    for at in 0..rows::count(typed.form, LEFT.count) {
        let (hours, from) = (typed.hours(&field("left", at)), typed.day(&field("left-from", at)));
        if let Some(hours) = hours {
            left.push(LifeLeft { from: from.unwrap_or(typed.today), hours });
        }
    }
    Tool {
        on: typed.on(before.on),
        name: typed.name("name", MOST_NAME),
        price: typed.money("price"),
        resale: typed.money("resale"),
        life: typed.hours("life"),
        upkeep: typed.money("upkeep"),
        kw: typed.form.read("kw", number::amount).map(Dec),
        load: typed.part("load"),
        before: typed.hours("before"),
        duty: duty(typed),
        rolls: typed.ticked("rolls"),
        from: super::chosen::tool_from(&typed.form.now("come-by")).unwrap_or(before.from),
        left,
        gone: before.gone,
        by: typed.id("by"),
        link: typed.maybe_words("link", MOST_LINK),
    }
}

fn duty(typed: &Typed) -> Vec<Duty> {
    let at = stages(&typed.form.now(AT));
    let duty = at.into_iter().map(|stage| {
        let field = share_field(stage);
        let share = typed.part(&field).unwrap_or(Dec::from(benchslate_core::measure::Quantity::ONE));
        if share == Dec::default() {
            typed.form.wrong(&field, words::more_than_none().to_owned());
        }
        Duty { stage, share }
    });
    duty.collect()
}

fn stages(codes: &str) -> Vec<Id> {
    codes.split(' ').filter_map(Id::parse).collect()
}

fn share_field(stage: Id) -> String {
    format!("duty-{stage}")
}

/// The stages as keys; for each one that is pressed, the share of the time that the tool runs at it.
pub fn runs_at(desk: Desk, form: Form) -> AnyView {
    let pressed = Memo::new(move |_| stages(&form.get(AT)));
    let named = desk.now_read(|view| choices::stages(view, &form.now(AT)));
    let names = named.clone();
    let shares = move || {
        let share = |stage: Id| {
            let code = stage.to_string();
            let name = names.iter().find(|it| it.0 == code).map(|it| it.1.clone()).unwrap_or_default();
            share(form, stage, &name)
        };
        let shares: Vec<AnyView> = pressed.get().into_iter().map(share).collect();
        (!shares.is_empty()).then(|| view! { <Cells>{shares}</Cells> })
    };
    let key = move |(code, name): (String, String)| {
        let stage = Id::parse(&code);
        let on = Memo::new(move |_| stage.is_some_and(|stage| pressed.read().contains(&stage)));
        let tap = move |()| {
            let Some(stage) = stage else { return };
            let mut all = pressed.get_untracked();
            match all.iter().position(|it| *it == stage) {
                Some(at) => drop(all.remove(at)),
                None => all.push(stage),
            }
            form.set(AT, all.iter().map(Id::to_string).collect::<Vec<String>>().join(" "));
        };
        view! { <Key label=name pressed=Signal::derive(move || Some(on.get())) on_tap=Callback::new(tap)/> }
    };
    view! {
        <Group title=said::runs_at().to_owned()/>
        {shares}
        <div class="gridkeys duty">{named.into_iter().map(key).collect::<Vec<_>>()}</div>
        <p class="note">{said::price_note()}</p>
    }
}

fn share(form: Form, stage: Id, name: &str) -> AnyView {
    let id = share_field(stage);
    let field = id.clone();
    view! {
        <crate::parts::field::Field
            id=id.clone()
            label=said::share_at(name)
            typing=crate::parts::field::Typing::Decimal
            hint=said::all_the_time().to_owned()
            value=form.signal_of(id.clone())
            error=form.error_of(id)
            on_input=Callback::new(move |text: String| form.set(&field, text))
        />
    }
}

pub fn fill_blade(it: &Blade) -> Vec<(&'static str, String)> {
    vec![
        ("what", it.what.clone()),
        ("tool", it.tool.to_string()),
        ("cost", super::given(it.cost)),
        ("life", super::given(it.life)),
        ("off", super::day_code(it.off)),
    ]
}

pub fn blade(typed: &Typed, before: &Blade) -> Blade {
    let life = typed.must_hours("life");
    Blade {
        on: typed.on(before.on),
        tool: typed.chosen("tool").unwrap_or(before.tool),
        what: typed.name("what", MOST_NAME),
        cost: typed.must_money("cost"),
        life,
        off: typed.day("off"),
    }
}

pub fn fill_tool_hours(it: &ToolHours) -> Vec<(&'static str, String)> {
    vec![
        ("hours", super::given(it.hours)),
        ("tool", it.tool.to_string()),
        ("stage", it.stage.to_string()),
        ("bearer", choices::code(it.bearer)),
    ]
}

pub fn tool_hours(typed: &Typed, before: &ToolHours) -> ToolHours {
    ToolHours {
        on: typed.on(before.on),
        tool: typed.chosen("tool").unwrap_or(before.tool),
        bearer: typed.bearer("bearer").unwrap_or(before.bearer),
        stage: typed.chosen("stage").unwrap_or(before.stage),
        hours: typed.must_hours("hours"),
    }
}

pub fn fill_monthly(it: &MonthlyCost) -> Vec<(&'static str, String)> {
    vec![
        ("what", it.what.clone()),
        ("a-month", super::given(it.a_month)),
        ("from", super::day_code(it.from)),
        ("to", super::day_code(it.to)),
        ("bill", dec(it.tools_kwh)),
        ("film", tick(it.side == Side::Film)),
    ]
}

pub fn monthly(typed: &Typed, before: &MonthlyCost) -> MonthlyCost {
    MonthlyCost {
        on: before.on,
        what: typed.name("what", MOST_NAME),
        a_month: typed.must_money("a-month"),
        side: if typed.ticked("film") { Side::Film } else { Side::Both },
        from: typed.day("from"),
        to: typed.day("to"),
        tools_kwh: typed.form.read("bill", number::amount).map(Dec),
    }
}
