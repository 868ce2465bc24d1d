//! Boards that the parts of a build are cut from: how many, which piece out of which, and what can't be beaten.

use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{AnswerText, Outcome},
        cut_bar::{CutBar, CutText},
        field::{Cells, Field, Typing},
        seg::{Choice, Seg, SegKind},
        sheet::{Above, Below, Hand, Head, Read, Sheet},
    },
    screens::{
        first_amount,
        form_keys::form_keys,
        lengths::{self, figure, short},
        stock::form::Form,
    },
    shell::{
        Desk, Go,
        desk::{Mark, View},
        frame::Places,
    },
    words::{parts as words, refusal, units},
};
use benchslate_core::{
    journal::{
        Change, Id, On,
        kinds::{Bearer, Note},
        shop::Section,
    },
    measure::{
        Fraction, Quantity, Unit,
        marks::{self, Hint},
        sums::cutting::{Cut, NoPlan, Plan, Stock, stock_typed},
    },
};

const KERF: &str = "cuts-kerf";
const BOARDS: &str = "cuts-boards";

/// The sheet.
#[component]
pub fn CutsSheet(of: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "cuts");
    let chosen = RwSignal::new(0_usize);
    let sections = Memo::new(move |_| desk.read(|view| view.shop.sections_of(of)));
    let at = Memo::new(move |_| chosen.get().min(sections.read().len().saturating_sub(1)));
    let section = Memo::new(move |_| sections.read().get(at.get()).cloned());
    let title = Signal::derive(move || {
        let named = desk.read(|view| view.shop.builds.get(&of).map(|it| it.title.clone()));
        words::boards_for(&named.unwrap_or_default())
    });
    let said = Memo::new(move |_| {
        let section = section.get()?;
        desk.read(|view| Some(said(view, form, &section)))
    });
    let choices = Signal::derive(move || {
        let choice = |it: &Section| Choice { label: desk.read(|view| called(view, it)), note: None };
        sections.read().iter().map(choice).collect::<Vec<Choice>>()
    });
    let which = move || {
        (sections.read().len() > 1).then(|| {
            view! {
                <Seg
                    name=words::which_section().to_owned()
                    kind=SegKind::Modes
                    choices
                    chosen=Signal::derive(move || at.get())
                    on_choose=Callback::new(move |at: usize| chosen.set(at))
                />
            }
        })
    };
    let all = move || match said.get() {
        None => view! { <p class="lead">{words::nothing_to_cut()}</p> },
        Some(Ok(said)) => drawn(said),
        // Said by its field once the key is tapped; nothing is drawn of what can't be read.
        Some(Err(_)) => ().draw(),
    };
    let keep = Callback::new(move |()| match said.get_untracked() {
        Some(Ok(said)) => keep(desk, go, of, said.note),
        Some(Err((field, sentence))) => {
            form.wrong(field, sentence);
            crate::screens::shop::to_the_wrong();
        }
        None => go.back(),
    });
    view! {
        <Sheet>
            <Head title=title tight=true/>
            <Above>
                <Read name=title below=words::cuts_below().to_owned()>
                    <div class="form">
                        {which}
                        {fields(desk, form, section)}
                    </div>
                    {all}
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>{form_keys(go, words::keep_plan(), keep)}</Hand>
                <Places cell=1 of_build=Signal::stored(Some((of, None)))/>
            </Below>
        </Sheet>
    }
}

/// Boards are kept by their section: before the journal is read there is none to type them for.
fn fields(desk: Desk, form: Form, section: Memo<Option<Section>>) -> AnyView {
    let any = Memo::new(move |_| section.with(Option::is_some));
    let cells = move || {
        let boards = Signal::derive(move || key(section.get().as_ref()));
        any.get().then(|| {
            view! {
                <Cells>
                    {field(desk, form, BOARDS, words::board_lengths(), "whole", boards)}
                    {field(desk, form, KERF, words::kerf(), "", Signal::stored(KERF.to_owned()))}
                </Cells>
            }
        })
    };
    cells.draw()
}

/// Where the boards of a section are kept in the form: each has its own.
fn key(section: Option<&Section>) -> String {
    let side = |it: &Option<Fraction>| it.map(|it| it.to_string()).unwrap_or_default();
    let sides: Vec<String> = section.map(|it| it.size.iter().map(side).collect()).unwrap_or_default();
    [BOARDS, &sides.join("-")].concat()
}

/// A field that holds what is usual until it is typed in.
fn field(
    desk: Desk,
    form: Form,
    id: &'static str,
    label: &'static str,
    class: &'static str,
    kept: Signal<String>,
) -> AnyView {
    let value = Signal::derive(move || form.get_or(&kept.get(), Some(desk.read(|view| usual(view, id)))));
    view! {
        <Field
            id
            label=label.to_owned()
            class
            typing=Typing::Words
            value
            error=form.error(id)
            on_input=Callback::new(move |text: String| {
                form.right(id);
                form.set_over(&kept.get_untracked(), text);
            })
        />
    }
}

/// Boards as they are mostly sold, and a full-kerf blade (common practice).
fn usual(view: &View, field: &str) -> String {
    let inches = first_amount::in_inches(view);
    match (field, inches) {
        (KERF, true) => "1/8 in",
        (KERF, false) => "3 mm",
        (_, true) => "8 ft",
        (_, false) => "2.4 m",
    }
    .to_owned()
}

/// A plan in words and drawings.
#[derive(Clone, PartialEq)]
struct Said {
    answer: AnswerText,
    cuts: Vec<CutText>,
    /// Pieces that nothing is left for.
    lacks: Option<String>,
    note: String,
}

type Wrong = (&'static str, String);

fn said(view: &View, form: Form, section: &Section) -> Result<Said, Wrong> {
    let text = |id: &str, kept: &str| form.get_or(kept, Some(usual(view, id)));
    let hint = |unit: Unit| Hint { unit: Some(unit), gallons: first_amount::gallons() };
    let boards = stock_typed(&text(BOARDS, &key(Some(section))), hint(lengths::coarse(view)));
    let boards = boards.map_err(|it| (BOARDS, refusal::sentence(&it)))?;
    let fine = lengths::fine(view);
    let kerf_text = text(KERF, KERF);
    let kerf = match kerf_text.trim() {
        "" => Fraction::ZERO,
        text => {
            in_inches(marks::quantity(text, hint(fine)).map_err(|it| (KERF, refusal::sentence(&it)))?, fine)
                .ok_or_else(|| (KERF, words::cant_be().to_owned()))?
        }
    };
    let stock = boards.iter().map(|it| Some(Stock { length: in_inches(it.length, fine)?, there: it.there }));
    let stock: Option<Vec<Stock>> = stock.collect();
    let stock = stock.ok_or_else(|| (BOARDS, words::cant_be().to_owned()))?;
    let plan = section.plan(&stock, kerf).map_err(|it| (BOARDS, no_plan(it).to_owned()))?;
    let length = |at: usize| {
        boards.get(at).map_or_else(String::new, |it| {
            units::amount_short(view.tongue, it.length.quantity(), it.length.unit.unwrap_or(fine), None)
        })
    };
    let fine_text = |it: Fraction| short(view, it, fine);
    let named = |at: usize| {
        section.parts.get(at).and_then(|id| view.shop.parts.get(id)).map(|it| it.body.name.clone())
    };
    let piece = |(at, count): &(usize, u32)| {
        let long = section.pieces.get(*at).map(|it| fine_text(it.length)).unwrap_or_default();
        words::piece(*count, &named(*at).unwrap_or_default(), &long)
    };
    let cut = |cut: &Cut| {
        let whole = stock.get(cut.stock).map_or(1.0, |it| drawn_as(it.length));
        let shares = cut.pieces.iter().flat_map(|(at, count)| {
            let long = section.pieces.get(*at).map_or(0.0, |it| drawn_as(it.length));
            (0..*count).map(move |_| long / whole)
        });
        CutText {
            label: words::alike(cut.boards, &length(cut.stock)),
            pieces: cut.pieces.iter().map(piece).collect::<Vec<_>>().join(", "),
            left: words::left(&fine_text(cut.rest)),
            shares: shares.collect(),
            rest: drawn_as(cut.rest) / whole,
        }
    };
    let cuts: Vec<CutText> = plan.cuts.iter().map(cut).collect();
    let left_over: Vec<String> = plan.left_over.iter().map(piece).collect();
    let answer = answer(view, section, &plan, &stock);
    let bound = answer.note.clone().unwrap_or_default();
    let lines: Vec<String> =
        cuts.iter().map(|it| [&it.label, " ", &it.pieces, "; ", &it.left].concat()).collect();
    let of: Vec<String> = (0..boards.len()).map(length).collect();
    let boards_of = [&answer.label, " (", &of.join(", "), ")"].concat();
    Ok(Said {
        note: words::plan_note(&called(view, section), &boards_of, kerf_text.trim(), &bound, &lines),
        answer,
        cuts,
        lacks: (!left_over.is_empty()).then(|| words::no_board_for(&left_over.join(", "))),
    })
}

fn in_inches(typed: marks::Typed, bare: Unit) -> Option<Fraction> {
    typed.amount.converted(typed.unit.unwrap_or(bare), Unit::Inch)
}

/// How many, what can't be beaten, and what is bought of it.
fn answer(view: &View, section: &Section, plan: &Plan, stock: &[Stock]) -> AnswerText {
    let long = |it: Fraction| short(view, it, lengths::coarse(view));
    let nothing = plan.bought == Fraction::ZERO;
    let by_number = stock.len() == 1;
    let bound = if !plan.left_over.is_empty() {
        String::new()
    } else if nothing {
        words::nothing_to_buy().to_owned()
    } else if by_number {
        words::fewer_cant_be(plan.least_boards, plan.boards)
    } else {
        words::less_cant_be(&long(plan.least_bought), &long(plan.bought))
    };
    let feet = section.board_feet(plan.bought).filter(|_| !nothing && first_amount::in_inches(view));
    let feet = feet.map(|[actual, sold]| {
        let feet = |it: Quantity| units::amount_short(view.tongue, it, Unit::BoardFoot, None);
        words::feet_to_buy(&feet(actual), &feet(sold))
    });
    let note =
        [Some(bound), feet].into_iter().flatten().filter(|it| !it.is_empty()).collect::<Vec<_>>().join("; ");
    AnswerText {
        label: words::so_many_boards(plan.boards),
        note: (!note.is_empty()).then_some(note),
        figure: if nothing { String::new() } else { long(plan.bought) },
        lacks: false,
    }
}

fn no_plan(why: NoPlan) -> &'static str {
    match why {
        NoPlan::NoPieces => words::nothing_to_cut(),
        NoPlan::NoBoards => words::no_boards(),
        NoPlan::TooMany => words::too_many(),
        NoPlan::OutOfRange => words::cant_be(),
    }
}

/// `5 1/2 × 3/4 in`.
fn called(view: &View, section: &Section) -> String {
    let fine = lengths::fine(view);
    let sides: Vec<String> = section.size.iter().flatten().map(|it| figure(view, *it, fine)).collect();
    if sides.is_empty() {
        words::any_section().to_owned()
    } else {
        words::size(&sides, Some(units::short(fine)))
    }
}

/// As a number, for a drawing only.
fn drawn_as(inches: Fraction) -> f64 {
    inches.quantity().map_or(0.0, crate::screens::stock::number)
}

fn drawn(said: Said) -> AnyView {
    let lacks = said.lacks.map(|lacks| view! { <p class="note lacks" role="alert">{lacks}</p> });
    let cuts: Vec<AnyView> = said.cuts.into_iter().map(|text| view! { <CutBar text/> }).collect();
    view! { <Outcome text=said.answer/>{lacks}{cuts} }
}

/// As a line of the build's journal.
fn keep(desk: Desk, go: Go, build: Id, text: String) {
    let entry = desk.fresh();
    desk.act_then(
        move |hand| {
            let on = On::At(hand.shop.zone.when(hand.now));
            vec![Change::write(entry, Note { on, text: text.clone(), bearer: Some(Bearer::Build(build)) })]
        },
        move |after| {
            let second = after.shop.builds.get(&build).map(|it| it.title.clone());
            Mark { kind: words::kind().to_owned(), what: words::marked_plan().to_owned(), second }.into()
        },
        move |done| {
            if done.is_ok() {
                go.back();
            }
        },
    );
}
