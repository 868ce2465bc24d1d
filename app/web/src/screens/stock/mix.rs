//! Resin for a void: how much of each part to pour, and both drawn in one go.

use super::{
    form::{Cell, Form},
    thing::Thing,
    use_stock,
};
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{AnswerText, Outcome},
        field::{Cells, Typing},
        pick::Choosable,
        sheet::{Above, Below, Hand, Head, Read, Sheet},
    },
    screens::{
        cautions, first_amount,
        form_keys::form_keys,
        hours::fields::{self, Choosing},
        shop,
    },
    shell::{Desk, Go, Place, desk::View, frame::Places},
    words::{mix as words, refusal, units},
};
use benchslate_core::{
    journal::{
        Change, Id, On,
        cautions::of_source,
        kinds::{Bearer, Draw, Source},
    },
    measure::{
        Quantity, Ratio, Unit,
        marks::Hint,
        number,
        sums::resin::{mix_typed, poured, voids_typed},
    },
};

const VOID: &str = "mix-void";
const RATIO: &str = "mix-ratio";
const ON_TOP: &str = "mix-on-top";
const OTHER: &str = "mix-other";

/// The form. `resin`: the first part of the ratio.
#[component]
pub fn MixSheet(resin: Id) -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "mix");
    let bearer = desk.bench().and_then(|bench| bench.bearer).unwrap_or(Bearer::Shop);
    let title = Signal::derive(move || {
        desk.read(|view| Thing::of(view.shop, resin).map(|it| words::title(&it.name))).unwrap_or_default()
    });
    let note = Signal::derive(move || Some(use_stock::into(desk, bearer)));
    let said = Memo::new(move |_| desk.read(|view| said(view, form, resin)));
    let answer = move || said.get().ok().map(|it| view! { <Outcome text=it.answer/> });
    let others = Choosing { field: OTHER, label: words::hardener(), class: "whole", of: other_items };
    let first = Signal::derive(move || desk.read(|view| first_other(view, resin)));
    let minds = move || desk.read(|view| of_source(view.shop, Source::Item(resin)));
    let keep = Callback::new(move |()| {
        form.all_right();
        match said.get_untracked() {
            Ok(said) => pour(desk, go, form, said, bearer),
            Err((field, sentence)) => {
                form.wrong(field, sentence);
                shop::to_the_wrong();
            }
        }
    });
    view! {
        <Sheet>
            <Head title=title note=note tight=true/>
            <Above>
                <Read name=title below=words::below().to_owned()>
                    <div class="form">
                        <Cells>
                            {Cell::words(VOID, words::void()).hint(words::void_hint()).whole().draw(form)}
                            {fields::typed(form, RATIO, words::ratio(), words::ratio_hint(), "", Typing::Words)}
                            {Cell::number(ON_TOP, words::on_top()).of("%").draw(form)}
                            {fields::choice(desk, form, others, first)}
                        </Cells>
                    </div>
                    {answer}
                    <p class="note">{words::by_volume_only()}</p>
                    {cautions::once(Signal::derive(minds))}
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>{form_keys(go, words::pour_both(), keep)}</Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

/// Both pours, and how they were worked out.
#[derive(Clone, PartialEq)]
struct Said {
    answer: AnswerText,
    /// Of which item, how much in millilitres.
    pours: [(Source, Quantity); 2],
    working: String,
    said: String,
}

type Wrong = (&'static str, String);

fn said(view: &View, form: Form, resin: Id) -> Result<Said, Wrong> {
    let missing = |field, sentence: &str| (field, sentence.to_owned());
    let bare = if first_amount::in_inches(view) { Unit::Inch } else { Unit::Millimetre };
    let hint = Hint { unit: Some(bare), gallons: first_amount::gallons() };
    let typed = form.get(VOID);
    let voids = voids_typed(&typed, hint).map_err(|it| match typed.trim() {
        "" => missing(VOID, words::no_void()),
        _ => (VOID, [&refusal::sentence(&it), " ", words::void_like()].concat()),
    })?;
    let ratio = form.get(RATIO);
    let mix = mix_typed(&ratio).map_err(|_| missing(RATIO, words::no_ratio()))?;
    let top = form.get(ON_TOP);
    let on_top = match top.trim() {
        "" => Ratio::ZERO,
        text => {
            let share = number::percent(text).map_err(|it| (ON_TOP, refusal::sentence(&it)))?;
            Ratio::share(share).ok_or_else(|| missing(ON_TOP, crate::words::stock::more_than_all_on_top()))?
        }
    };
    let other = form.get(OTHER);
    let other = if other.is_empty() { first_other(view, resin) } else { other };
    let other = Id::parse(&other).filter(|it| *it != resin);
    let other = other.ok_or_else(|| missing(OTHER, words::no_hardener()))?;
    let too_large = || missing(VOID, words::too_large());
    let whole = poured(&voids, on_top).filter(|it| !it.is_zero()).ok_or_else(too_large)?;
    let [first, second] = mix.of(whole).ok_or_else(too_large)?;
    let (resin, hardener) = (Source::Item(resin), Source::Item(other));
    for (source, much, field) in [(resin, first, VOID), (hardener, second, OTHER)] {
        if view.shop.in_stock_unit(source, much, Unit::Millilitre).is_none() {
            return Err(missing(field, words::not_by_volume()));
        }
    }
    let amount = |it: Quantity| units::amount_short(view.tongue, it, Unit::Millilitre, None);
    let name = |source: Source| crate::words::gaps::name(view.shop, source);
    let both = words::both((&amount(first), &name(resin)), (&amount(second), &name(hardener)));
    let working = words::working(
        typed.trim(),
        &view.tongue.quantity(on_top.hundredths()),
        &amount(whole),
        ratio.trim(),
    );
    let answer =
        AnswerText { label: both.clone(), note: Some(working.clone()), figure: amount(whole), lacks: false };
    Ok(Said { answer, pours: [(resin, first), (hardener, second)], working, said: both })
}

/// Items that are kept by volume, or hold one.
fn other_items(view: &View, _: &str) -> Vec<Choosable> {
    let by_volume = |id: &Id| {
        view.shop.offers(*id)
            && view.shop.in_stock_unit(Source::Item(*id), Quantity::ONE, Unit::Millilitre).is_some()
    };
    let ids = view.shop.items.keys().copied().filter(by_volume);
    ids.map(|id| (id.to_string(), crate::words::gaps::name(view.shop, Source::Item(id)).to_owned())).collect()
}

/// The first other item of the list, until one is chosen.
fn first_other(view: &View, resin: Id) -> String {
    let resin = resin.to_string();
    let other = other_items(view, "").into_iter().map(|it| it.0).find(|it| *it != resin);
    other.unwrap_or_default()
}

fn pour(desk: Desk, go: Go, form: Form, said: Said, bearer: Bearer) {
    let stage = use_stock::stage_at(desk, bearer).map(|(stage, _)| stage);
    let entries = [desk.fresh(), desk.fresh()];
    let (pours, working) = (said.pours, said.working.clone());
    let ([(first, _), _], [poured_first, _]) = (pours, entries);
    desk.act_then(
        move |hand| {
            let on = On::At(hand.shop.zone.when(hand.now));
            let draw = |((from, quantity), entry): ((Source, Quantity), Id)| {
                let draw = Draw {
                    on,
                    from,
                    quantity: quantity.into(),
                    unit: Unit::Millilitre,
                    bearer,
                    side: None,
                    stage,
                    returns: None,
                    note: Some(working.clone()),
                };
                Change::write(entry, draw)
            };
            pours.into_iter().zip(entries).map(draw).collect()
        },
        move |after| use_stock::used(after, poured_first, &said.said, first),
        move |done| {
            if done.is_ok() {
                form.done(desk);
                // Past the form for one part alone.
                let (Source::Lot(of) | Source::Item(of)) = first;
                go.instead(&Place::Lot(of));
            }
        },
    );
}

/// Leads there from the form where it is used: what is kept by volume may be a part of a mix.
pub fn may_be_mixed(view: &View, thing: &Thing) -> bool {
    let others = other_items(view, "");
    let id = thing.id().to_string();
    others.len() > 1 && others.iter().any(|(code, _)| *code == id)
}
