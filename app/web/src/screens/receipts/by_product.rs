//! Money that came for what a lot or a build yielded beside what it was for: it lowers what that cost.

use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        field::Cells,
        sheet::{Above, Below, Hand, Head, Read, Sheet},
        sum_row::Leads,
    },
    screens::{
        first_amount,
        form_keys::form_keys,
        hours::choices,
        stock::{
            form::{Cell, Form},
            use_stock,
        },
    },
    shell::{Desk, Go, desk::Mark, frame::Places},
    words::{expense, journal, money, notes, receipts as words},
};
use benchslate_core::{
    journal::{
        Change, Kind, On,
        kinds::{Bearer, ByProduct},
    },
    measure::{Dec, number},
};

const WHAT: &str = "by-product-what";
const AMOUNT: &str = "by-product-amount";
const OF: &str = "by-product-of";
/// Longest name, in letters.
const MOST: usize = 80;

/// The form.
#[component]
pub fn ByProductSheet() -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let form = Form::open(desk, "by-product");
    let opened_for = crate::screens::opened_for().filter(|of| *of != Bearer::Shop);
    let of = Memo::new(move |_| {
        let bench = || desk.bench().and_then(|bench| bench.bearer).filter(|of| *of != Bearer::Shop);
        let last = || Some(all(desk).first()?.0);
        choices::bearer(&form.get(OF)).or(opened_for).or_else(bench).or_else(last)
    });
    let chooses = RwSignal::new(false);
    let keep = Callback::new(move |()| keep(desk, go, form, of.get_untracked()));
    let fields = move || {
        let leads = Leads::Tap(Callback::new(move |()| chooses.set(true)));
        let label = of.get().map_or_else(
            || words::nothing_to_lower().to_owned(),
            |of| words::lowers(&use_stock::title(desk, of)),
        );
        view! {
            <Cells>
                {Cell::words(WHAT, words::what_came()).hint(words::what_came_hint()).whole().draw(form)}
                {Cell::number(AMOUNT, words::came_for_it()).unit(first_amount::beside(desk)).draw(form)}
            </Cells>
            {first_amount::offer(desk)}
            <RowLink label end=expense::change().to_owned() leads/>
            <p class="note">{words::by_product_note()}</p>
        }
    };
    let choose = move |to: Bearer| {
        form.set(OF, choices::code(to));
        chooses.set(false);
    };
    view! {
        <Sheet>
            <Head title=words::by_product().to_owned() tight=true/>
            <Above>
                <Read name=words::by_product().to_owned()>
                    {move || if chooses.get() { super::bearers(all(desk), Callback::new(choose)) } else { fields() }}
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>{form_keys(go, words::keep_it(), keep)}</Hand>
                <Places cell=2/>
            </Below>
        </Sheet>
    }
}

/// Builds and lots: the shop as a whole yields nothing.
fn all(desk: Desk) -> Vec<(Bearer, String)> {
    use_stock::bearers(desk).into_iter().filter(|(of, _)| *of != Bearer::Shop).collect()
}

fn keep(desk: Desk, go: Go, form: Form, of: Option<Bearer>) {
    form.all_right();
    let what = form.now(WHAT).trim().to_owned();
    if what.is_empty() {
        form.wrong(WHAT, words::no_what().to_owned());
    } else if what.chars().count() > MOST {
        form.wrong(WHAT, journal::too_long(MOST));
    }
    if form.now(AMOUNT).trim().is_empty() {
        form.wrong(AMOUNT, words::no_amount().to_owned());
    }
    let amount = form.read(AMOUNT, number::amount).map(Dec);
    if !first_amount::can_be_kept(desk) {
        form.wrong(AMOUNT, money::no_currency().to_owned());
    }
    if of.is_none() {
        form.wrong(WHAT, words::nothing_to_lower().to_owned());
    }
    let (Some(amount), Some(of)) = (amount.filter(|_| !form.is_wrong()), of) else { return };
    let (entry, said) = (desk.fresh(), what.clone());
    desk.act_then(
        move |hand| {
            let mut changes = first_amount::settings(hand);
            let on = On::At(hand.shop.zone.when(hand.now));
            changes.push(Change::write(entry, ByProduct { on, of, what: what.clone(), amount }));
            changes
        },
        move |after| {
            let figure = amount.money().map(|money| after.tongue.money(money)).unwrap_or_default();
            let home = crate::screens::journal::facts::bearer(&after.view(), of);
            let kind = journal::kind(Kind::ByProduct).to_owned();
            Mark { kind, what: expense::marked(&figure, &said), second: Some(notes::mark_home(&home)) }.into()
        },
        move |done| {
            if done.is_ok() {
                form.done(desk);
                go.back();
            }
        },
    );
}
