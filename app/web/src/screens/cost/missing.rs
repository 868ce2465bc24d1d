//! Sheets with nothing on them: no such build, a figure that is gone, a build with no line yet.

use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::{Answer, AnswerText},
        key::{Key, KeyKind},
        message::Message,
        sheet::{Hand, Keys},
    },
    screens::About,
    shell::{Desk, Go, Place},
    words::cost as words,
};
use benchslate_core::journal::{Id, kinds::Bearer};

/// The build is not there.
pub fn no_build() -> AnyView {
    message(words::no_build(), words::no_build_why())
}

/// The address opens nothing any more.
pub fn no_figure() -> AnyView {
    message(words::nothing_here(), words::nothing_here_why())
}

fn message(title: &'static str, why: &'static str) -> AnyView {
    view! { <Message title=title.to_owned() lines=Signal::stored(vec![why.to_owned()])/> }
}

/// Nothing was written down for this build: what goes here.
pub fn nothing_yet() -> AnyView {
    let text = AnswerText {
        label: words::true_cost().to_owned(),
        figure: words::nothing_yet().to_owned(),
        lacks: true,
        note: None,
    };
    view! { <Answer text/><p class="note">{words::what_goes_here()}</p> }
}

/// And the first acts, for this build.
pub fn first_acts(build: Id) -> AnyView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let About(about) = expect_context();
    let to = move |place: Place| {
        Callback::new(move |()| {
            let bearer = Some(Bearer::Build(build));
            if place == Place::Bench {
                desk.wish.set(bearer)
            } else {
                about.set(bearer)
            }
            go.to(&place);
        })
    };
    view! {
        <Hand name=words::keys().to_owned()>
            <Keys class="low">
                <Key label=words::use_stock().to_owned() on_tap=to(Place::Use(None))/>
                <Key label=words::money_paid().to_owned() on_tap=to(Place::Expense)/>
            </Keys>
            <Keys class="go">
                <Key
                    label=words::start_work().to_owned()
                    note=words::on_the_bench().to_owned()
                    kind=KeyKind::Filled
                    on_tap=to(Place::Bench)
                />
            </Keys>
        </Hand>
    }
}
