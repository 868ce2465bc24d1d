//! By which formula stock is drawn, from a day on; what that comes to is told before it is kept.

use crate::dom::prelude::*;
use crate::{
    parts::{
        field::{Cells, Typing},
        sheet::{Above, Below, Hand, Head, Read, Sheet},
        sum_row::{Group, SumRow, SumText},
    },
    screens::{
        form_keys::form_keys,
        hours::fields,
        journal::facts,
        shop::{self, write_setting},
        stock::form::Form,
        trouble::Troubles,
    },
    shell::{
        Desk, Go,
        desk::{Mark, Marked, View},
        frame::Places,
        mark::LastMarkHere,
    },
    words::{shelf as words, shop as shop_words},
};
use benchslate_core::{
    costing::{Formula, Under, formula_effect},
    journal::kinds::{Bearer, SettingKey},
    measure::{Day, Instant, Money, day},
};

const FORMULA: &str = "formula";
const FROM: &str = "formula-from";
const CODES: [&str; 2] = ["first_in_first_out", "moving_average"];

/// The form.
#[component]
pub fn FormulaSheet() -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "stock-formula");
    form.offer(vec![(FROM.to_owned(), desk.now_read(|view| today(view, desk.at_tap())).to_string())]);
    let now = Signal::derive(move || {
        let at = desk.minute();
        Some(desk.read(|view| words::formula(Formula::on(view.shop, today(view, at)))).to_owned())
    });
    let effect = Memo::new(move |_| {
        let (code, from, at) = (form.get(FORMULA), form.get(FROM), desk.minute());
        desk.read(|view| effect(view, chosen(&code), &from, at))
    });
    let keep = Callback::new(move |()| keep(desk, go, form));
    view! {
        <Sheet>
            <Head title=words::drawn_by_formula().to_owned() note=now tight=true/>
            <Above>
                <Troubles/>
                <Read name=words::drawn_by_formula().to_owned() below=words::what_it_comes_to().to_owned()>
                    <div class="form">
                        {fields::set(form, FORMULA, words::drawn_by_formula(), &FORMULAS.map(words::formula), &CODES)}
                        <Cells>{fields::typed(form, FROM, words::from_day(), "", "whole", Typing::Date)}</Cells>
                    </div>
                    {move || effect.get().map(told)}
                    <p class="note">{words::what_a_change_does()}</p>
                </Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::formula_keys().to_owned()>{form_keys(go, words::keep_formula(), keep)}</Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

/// In the order in which they are offered: who comes here wants another than the usual one.
const FORMULAS: [Formula; 2] = [Formula::FirstIn, Formula::MovingAverage];

fn chosen(code: &str) -> Formula {
    if code == Formula::MovingAverage.code() { Formula::MovingAverage } else { Formula::FirstIn }
}

fn today(view: &View, now: Instant) -> Day {
    view.shop.zone.day(now)
}

/// A figure by the chosen formula, and the same by the other one.
#[derive(Clone, PartialEq)]
struct Row {
    label: String,
    what: Option<&'static str>,
    by_chosen: String,
    by_other: String,
}

#[derive(Clone, PartialEq)]
struct Effect {
    rows: Vec<Row>,
    other: &'static str,
    moves: bool,
}

/// None: no day can be read.
fn effect(view: &View, formula: Formula, from: &str, now: Instant) -> Option<Effect> {
    let from = day::typed_near(from, today(view, now)).ok()?;
    let (mut by_chosen, mut by_other) = (Under::default(), Under::default());
    for under in formula_effect(view.shop, now, Some(from)) {
        if under.formula == formula { by_chosen = under } else { by_other = under }
    }
    let money = |it: Money| view.tongue.money(it);
    let mut rows = vec![Row {
        label: words::for_books(false).to_owned(),
        what: None,
        by_chosen: money(by_chosen.shelf),
        by_other: money(by_other.shelf),
    }];
    let builds = by_chosen.builds.iter().zip(&by_other.builds);
    rows.extend(builds.map(|((build, chosen), (_, other))| Row {
        label: facts::bearer(view, Bearer::Build(*build)),
        what: Some(words::used_up()),
        by_chosen: money(*chosen),
        by_other: money(*other),
    }));
    let moves = by_chosen.shelf != by_other.shelf || by_chosen.builds != by_other.builds;
    Some(Effect { rows, other: words::formula(by_other.formula), moves })
}

fn told(effect: Effect) -> AnyView {
    let other = effect.other;
    let row = move |row: Row| {
        let text = SumText {
            label: row.label,
            working: Some(words::else_it_is(row.what, other, &row.by_other)),
            figure: row.by_chosen,
            ..SumText::default()
        };
        view! { <SumRow text signed=false/> }
    };
    let same = (!effect.moves).then(|| view! { <p class="note">{words::moves_nothing()}</p> });
    view! {
        <Group title=words::what_it_comes_to().to_owned()/>
        {effect.rows.into_iter().map(row).collect::<Vec<_>>()}
        {same}
    }
}

fn keep(desk: Desk, go: Go, form: Form) {
    form.all_right();
    let now = desk.at_tap();
    let from = fields::must(form, FROM, |text| day::typed_near(text, desk.now_read(|view| today(view, now))));
    let Some(from) = from else { return shop::to_the_wrong() };
    let formula = chosen(&form.now(FORMULA));
    let stands = desk.now_read(|view| Formula::on(view.shop, from) == formula);
    if stands {
        form.wrong(FROM, words::that_already(words::formula(formula)));
        return shop::to_the_wrong();
    }
    desk.act_then(
        move |hand| {
            vec![write_setting(hand, SettingKey::StockFormula, Some(from), formula.code().to_owned())]
        },
        move |after| {
            let what = words::formula_from(words::formula(formula), &after.tongue.day_year(from));
            Marked::from(Mark { kind: shop_words::set().to_owned(), what, second: None })
        },
        move |done| {
            if done.is_ok() {
                form.done(desk);
                go.back();
            }
        },
    );
}
