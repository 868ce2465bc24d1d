//! Something is put on a build that is closed: reopen it, or the shop bears it, where it could. Asked over the title block of whatever
//! sheet one is on; what was typed stays typed until it is answered.

use super::journal::facts;
use crate::dom::prelude::*;
use crate::{
    parts::{
        key::{Key, KeyKind},
        sheet::Keys,
    },
    shell::{Desk, desk::Late},
    words::late as words,
};
use benchslate_core::journal::{kinds::Bearer, late::OnClosed};

/// The question and its keys; nothing while there is none.
#[component]
pub fn LateAsk() -> impl IntoView {
    let desk = Desk::here();
    (move || desk.closed.get().map(|closed| ask(desk, closed))).draw()
}

fn ask(desk: Desk, closed: OnClosed) -> AnyView {
    let OnClosed { build, by_shop } = closed;
    let says = desk.now_read(|view| {
        let title = facts::bearer(view, Bearer::Build(build));
        let closed = view.shop.closed_on(build, view.shop.zone.day(desk.at_tap()));
        words::closed(&title, &closed.map(|day| view.tongue.day(day)).unwrap_or_default(), by_shop)
    });
    let key = move |answer: Option<Late>| Callback::new(move |()| desk.answer(answer));
    // What was made is of its build, whoever pays.
    let shop = by_shop.then(|| {
        view! {
            <Key
                label=words::shop_bears().to_owned()
                note=words::a_cost_of_the_year().to_owned()
                on_tap=key(Some(Late::ShopBears))
            />
        }
    });
    view! {
        <section class="late-ask" role="group" aria-label=words::name()>
            <p role="alert">{says}</p>
            <Keys class="mid">
                <Key label=words::leave_it().to_owned() on_tap=key(None)/>
                {shop}
                <Key label=words::reopen().to_owned() kind=KeyKind::Filled on_tap=key(Some(Late::Reopen))/>
            </Keys>
        </section>
    }
}
