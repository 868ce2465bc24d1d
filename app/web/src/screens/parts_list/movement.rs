//! How a part moves with its moisture, and what all of it weighs.

use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{AnswerText, Outcome},
        field::Cells,
        pick::Choosable,
        seg::{Choice, Seg, SegKind},
        sheet::{Above, Below, Hand, Head, Read, Sheet},
    },
    screens::{
        form_keys::form_keys,
        hours::fields::{self, Choosing},
        lengths, shop,
        stock::form::{Cell, Form},
    },
    shell::{
        Desk, Go,
        desk::{Mark, View},
        frame::Places,
    },
    words::{movement as words, refusal, units},
};
use benchslate_core::{
    journal::{
        Change, Id, On,
        kinds::{Bearer, Note},
    },
    measure::{
        Fraction, Quantity, Unit, number,
        sums::{
            movement::{Beyond, Sawn, change, mass},
            species::Species,
        },
    },
};

const SPECIES: &str = "moves-species";
const SAWN: &str = "moves-sawn";
const FROM: &str = "moves-from";
const TO: &str = "moves-to";
/// How a form keeps that it is quarter sawn.
const QUARTER: &str = "quarter";

/// The sheet. `part`: a line of a parts list with a width.
#[component]
pub fn MovementSheet(part: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "movement");
    let build = Signal::derive(move || desk.read(|view| view.shop.parts.get(&part).map(|it| it.body.build)));
    let title = Signal::derive(move || {
        let name = desk.read(|view| view.shop.parts.get(&part).map(|it| it.body.name.clone()));
        words::title(&name.unwrap_or_default())
    });
    let said = Memo::new(move |_| desk.read(|view| said(view, form, part)));
    let answer = move || said.get().ok().map(|it| it.rows.into_iter().map(outcome).collect::<Vec<AnyView>>());
    let species = Choosing { field: SPECIES, label: words::species(), class: "whole", of: species };
    let sawn = Signal::derive(move || usize::from(form.get(SAWN) == QUARTER));
    let saw = Callback::new(move |at: usize| form.set(SAWN, if at == 1 { QUARTER } else { "" }));
    let ways = [words::flat_sawn(), words::quarter_sawn()].map(Choice::plain).to_vec();
    let keep = Callback::new(move |()| {
        form.all_right();
        match said.get_untracked() {
            Ok(said) => keep(desk, go, part, said.note),
            Err((field, sentence)) => {
                form.wrong(field, sentence);
                shop::to_the_wrong();
            }
        }
    });
    view! {
        <Sheet>
            <Head title=title tight=true/>
            <Above>
                <Read name=title below=words::below().to_owned()>
                    <Seg
                        name=words::how_sawn().to_owned()
                        kind=SegKind::Modes
                        choices=Signal::stored(ways)
                        chosen=sawn
                        on_choose=saw
                    />
                    <div class="form">
                        <Cells>
                            {fields::choice(desk, form, species, Signal::stored(String::new()))}
                            {Cell::number(FROM, words::from()).of("%").draw(form)}
                            {Cell::number(TO, words::to()).of("%").draw(form)}
                        </Cells>
                    </div>
                    {answer}
                    <p class="note">{words::only_between()}</p>
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>{form_keys(go, words::keep(), keep)}</Hand>
                <Places cell=1 of_build=Signal::derive(move || build.get().map(|it| (it, None)))/>
            </Below>
        </Sheet>
    }
}

fn outcome(text: AnswerText) -> AnyView {
    view! { <Outcome text/> }
}

fn species(_: &View, _: &str) -> Vec<Choosable> {
    let none = (String::new(), words::which().to_owned());
    let all = Species::ALL.iter().map(|it| (it.code().to_owned(), words::name(*it).to_owned()));
    [none].into_iter().chain(all).collect()
}

/// What moves and what it weighs.
#[derive(Clone, PartialEq)]
struct Said {
    rows: Vec<AnswerText>,
    note: String,
}

type Wrong = (&'static str, String);

fn said(view: &View, form: Form, part: Id) -> Result<Said, Wrong> {
    let missing = |field, sentence: &str| (field, sentence.to_owned());
    let it = view.shop.parts.get(&part).ok_or_else(|| missing(SPECIES, words::no_width()))?;
    let species =
        Species::from_code(&form.get(SPECIES)).ok_or_else(|| missing(SPECIES, words::no_species()))?;
    let sawn = if form.get(SAWN) == QUARTER { Sawn::Quarter } else { Sawn::Flat };
    let moisture = |field| {
        let read = number::amount(&form.get(field)).map_err(|it| (field, refusal::sentence(&it)))?;
        Quantity::from_decimal(read).ok_or_else(|| missing(field, words::beyond()))
    };
    let (from, to) = (moisture(FROM)?, moisture(TO)?);
    let [length, width, thickness] = it.inches;
    let width = width.ok_or_else(|| missing(SPECIES, words::no_width()))?;
    let inches = width.quantity().ok_or_else(|| missing(SPECIES, words::no_width()))?;
    let moved = change(species, sawn, inches, from, to).map_err(|beyond| match beyond {
        Beyond::Moisture if outside(from) => missing(FROM, words::beyond()),
        Beyond::Moisture => missing(TO, words::beyond()),
        Beyond::Species => missing(SPECIES, words::not_known()),
        Beyond::Number => missing(SPECIES, words::no_width()),
    })?;
    let fine = lengths::fine(view);
    let amount = |it: Fraction| {
        let amount = it.converted(Unit::Inch, fine).and_then(Fraction::quantity).unwrap_or_default();
        [
            &view.tongue.number(&amount.shown_to(if fine == Unit::Inch { 3 } else { 1 })),
            " ",
            units::short(fine),
        ]
        .concat()
    };
    let shrinks = moved.numerator() < 0;
    let size =
        Fraction::of(moved.numerator().saturating_abs(), moved.denominator()).unwrap_or(Fraction::ZERO);
    let percent = |it: Quantity| view.tongue.quantity(it);
    let working = words::working(
        words::name(species),
        sawn == Sawn::Quarter,
        &lengths::short(view, width, fine),
        &percent(from),
        &percent(to),
    );
    let mut rows = vec![AnswerText {
        label: words::moves(shrinks).to_owned(),
        note: Some(working.clone()),
        figure: amount(size),
        lacks: false,
    }];
    let volume = length.zip(thickness).and_then(|(length, thickness)| {
        let size = benchslate_core::measure::board::Size { thickness, width, length };
        size.true_volume(it.body.count)
    });
    let weighs = volume.and_then(|it| mass(species, it, Unit::BoardFoot, to)).and_then(|it| {
        let unit = if fine == Unit::Inch { Unit::Pound } else { Unit::Kilogram };
        Some((it.converted(Unit::Kilogram, unit)?.quantity()?, unit))
    });
    if let Some((weight, unit)) = weighs {
        rows.push(AnswerText {
            label: words::weighs(it.body.count),
            note: Some(words::at_moisture(&percent(to))),
            figure: [&view.tongue.number(&weight.shown_to(1)), " ", units::short(unit)].concat(),
            lacks: false,
        });
    }
    let lines: Vec<String> = rows.iter().map(|it| [&it.label, " ", &it.figure].concat()).collect();
    Ok(Said { note: words::note(&it.body.name, &lines.join(", "), &working), rows })
}

fn outside(moisture: Quantity) -> bool {
    change(Species::OakWhite, Sawn::Flat, Quantity::ONE, moisture, moisture) == Err(Beyond::Moisture)
}

/// As a line of the build's journal.
fn keep(desk: Desk, go: Go, part: Id, text: String) {
    let entry = desk.fresh();
    desk.act_then(
        move |hand| {
            let Some(build) = hand.shop.parts.get(&part).map(|it| it.body.build) else { return Vec::new() };
            let on = On::At(hand.shop.zone.when(hand.now));
            vec![Change::write(entry, Note { on, text: text.clone(), bearer: Some(Bearer::Build(build)) })]
        },
        move |after| {
            let what = after.shop.parts.get(&part).map(|it| words::title(&it.body.name)).unwrap_or_default();
            Mark { kind: words::kind().to_owned(), what, second: None }.into()
        },
        move |done| {
            if done.is_ok() {
                go.back();
            }
        },
    );
}
