//! How a part or a board of a lot moves with its moisture, and what all of it weighs.

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
    words::{gaps, movement as words, refusal, units},
};
use benchslate_core::{
    costing::Books,
    journal::{
        Change, Id, On,
        kinds::{Bearer, Note, Source},
    },
    measure::{
        Fraction, Quantity, Unit,
        letters::small,
        marks::{self, Hint},
        number,
        sums::{
            movement::{Beyond, Sawn, change, mass},
            species::Species,
        },
    },
};

const SPECIES: &str = "moves-species";
const SAWN: &str = "moves-sawn";
const WIDE: &str = "moves-wide";
const FROM: &str = "moves-from";
const TO: &str = "moves-to";
/// How a form keeps that it is quarter sawn.
const QUARTER: &str = "quarter";

/// The sheet. `of`: a line of a parts list with a width, or a lot, of which the width of a board is typed.
#[component]
pub fn MovementSheet(of: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let part = of;
    let form = Form::open(desk, "movement");
    let build = Signal::derive(move || desk.read(|view| view.shop.parts.get(&part).map(|it| it.body.build)));
    let is_lot = Memo::new(move |_| desk.read(|view| view.shop.lots.contains_key(&of)));
    let title = Signal::derive(move || words::title(&desk.read(|view| name(view, of))));
    let said = Memo::new(move |_| desk.books(|books, view| said(books, view, form, of)));
    let unit = Signal::derive(move || Some(units::short(desk.read(lengths::fine)).to_owned()));
    let wide =
        move || is_lot.get().then(|| Cell::words(WIDE, words::board_width()).unit(unit).whole().draw(form));
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
                            {fields::choice(desk, form, species, of_lot(desk, of))}
                            {wide}
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
                {move || {
                    let cell = if is_lot.get() { 2 } else { 1 };
                    view! { <Places cell of_build=Signal::derive(move || build.get().map(|it| (it, None)))/> }
                }}
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

fn name(view: &View, of: Id) -> String {
    let part = view.shop.parts.get(&of).map(|it| it.body.name.clone());
    part.unwrap_or_else(|| gaps::name(view.shop, Source::Lot(of)))
}

/// The species that a lot says it is of, where it is one of ours.
fn of_lot(desk: Desk, of: Id) -> Signal<String> {
    Signal::derive(move || {
        desk.read(|view| spoken(view, of).map(Species::code).unwrap_or_default().to_owned())
    })
}

fn spoken(view: &View, of: Id) -> Option<Species> {
    let lot = view.shop.lots.get(&of)?;
    let said = small(lot.species.as_deref().unwrap_or(&lot.name));
    Species::ALL.iter().copied().find(|it| {
        let name = small(words::name(*it));
        said == name || said.contains(&name)
    })
}

/// What is looked at: its width, and how much of it there is.
struct Asked {
    name: String,
    width: Fraction,
    volume: Option<(Quantity, Unit)>,
    weighs: String,
}

fn asked(books: &Books, view: &View, form: Form, of: Id) -> Result<Asked, Wrong> {
    let missing = |field, sentence: &str| (field, sentence.to_owned());
    if let Some(it) = view.shop.parts.get(&of) {
        let [length, width, thickness] = it.inches;
        let width = width.ok_or_else(|| missing(SPECIES, words::no_width()))?;
        let volume = length.zip(thickness).and_then(|(length, thickness)| {
            let size = benchslate_core::measure::board::Size { thickness, width, length };
            Some((size.true_volume(it.body.count)?, Unit::BoardFoot))
        });
        return Ok(Asked { name: it.body.name.clone(), width, volume, weighs: words::weighs(it.body.count) });
    }
    let lot = view.shop.lots.get(&of).ok_or_else(|| missing(SPECIES, words::no_width()))?;
    let typed = form.get(WIDE);
    if typed.trim().is_empty() {
        return Err(missing(WIDE, words::no_board_width()));
    }
    let hint = Hint { unit: Some(lengths::fine(view)), ..Hint::default() };
    let width = marks::quantity(&typed, hint).and_then(|it| it.in_unit(Unit::Inch));
    let width = width.map_err(|it| (WIDE, refusal::sentence(&it)))?;
    if width.is_zero() {
        return Err(missing(WIDE, words::no_board_width()));
    }
    let left = books.shelf_line(Source::Lot(of)).and_then(|line| line.quantity);
    let volume = left.filter(|it| !it.is_zero() && !it.is_negative()).zip(Some(lot.unit));
    let width = Fraction::from_quantity(width);
    Ok(Asked { name: name(view, of), width, volume, weighs: words::left_weighs().to_owned() })
}

fn said(books: &Books, view: &View, form: Form, of: Id) -> Result<Said, Wrong> {
    let missing = |field, sentence: &str| (field, sentence.to_owned());
    let chosen = form.get(SPECIES);
    let species = Species::from_code(&chosen).or_else(|| spoken(view, of).filter(|_| chosen.is_empty()));
    let species = species.ok_or_else(|| missing(SPECIES, words::no_species()))?;
    let asked = asked(books, view, form, of)?;
    let sawn = if form.get(SAWN) == QUARTER { Sawn::Quarter } else { Sawn::Flat };
    let moisture = |field| {
        let read = number::amount(&form.get(field)).map_err(|it| (field, refusal::sentence(&it)))?;
        Quantity::from_decimal(read).ok_or_else(|| missing(field, words::beyond()))
    };
    let (from, to) = (moisture(FROM)?, moisture(TO)?);
    let width = asked.width;
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
    let weighs = asked.volume.and_then(|(it, of)| mass(species, it, of, to)).and_then(|it| {
        let unit = if fine == Unit::Inch { Unit::Pound } else { Unit::Kilogram };
        Some((it.converted(Unit::Kilogram, unit)?.quantity()?, unit))
    });
    if let Some((weight, unit)) = weighs {
        rows.push(AnswerText {
            label: asked.weighs,
            note: Some(words::at_moisture(&percent(to))),
            figure: [&view.tongue.number(&weight.shown_to(1)), " ", units::short(unit)].concat(),
            lacks: false,
        });
    }
    let lines: Vec<String> = rows.iter().map(|it| [&it.label, " ", &it.figure].concat()).collect();
    Ok(Said { note: words::note(&asked.name, &lines.join(", "), &working), rows })
}

fn outside(moisture: Quantity) -> bool {
    change(Species::OakWhite, Sawn::Flat, Quantity::ONE, moisture, moisture) == Err(Beyond::Moisture)
}

/// As a line of the journal of its build, or of the lot.
fn keep(desk: Desk, go: Go, part: Id, text: String) {
    let entry = desk.fresh();
    desk.act_then(
        move |hand| {
            let build = hand.shop.parts.get(&part).map(|it| Bearer::Build(it.body.build));
            let lot = || hand.shop.lots.contains_key(&part).then_some(Bearer::Lot(part));
            let bearer = build.or_else(lot);
            let on = On::At(hand.shop.zone.when(hand.now));
            bearer
                .map(|it| Change::write(entry, Note { on, text: text.clone(), bearer: Some(it) }))
                .into_iter()
                .collect()
        },
        move |after| {
            let what = words::title(&name(&after.view(), part));
            Mark { kind: words::kind().to_owned(), what, second: None }.into()
        },
        move |done| {
            if done.is_ok() {
                go.back();
            }
        },
    );
}
