//! A new build: a name is enough.

use crate::dom::prelude::*;
use crate::{
    parts::{
        field::Field,
        sheet::{Above, Below, Hand, Head, Read, Sheet},
    },
    screens::{cautions, form_keys::form_keys},
    shell::{
        Desk, Go, Place,
        desk::{Mark, Marked},
        frame::Places,
    },
    store::persist,
    words::builds as words,
};
use benchslate_core::journal::{
    Change, Id, On,
    cautions::of_title,
    kinds::{Bearer, Build, Person},
};
use leptos::task::spawn_local;

/// Where its draft is kept.
const DRAFT: &str = "new-build";

/// The first build brings the first person along: whoever holds the phone.
#[component]
pub fn NewBuildSheet() -> impl IntoView {
    let (desk, go) = (Desk::here(), expect_context::<Go>());
    let title = RwSignal::new(String::new());
    let wrong = RwSignal::new(None::<String>);
    crate::shell::draft::keep(desk, DRAFT, title);
    let start = Callback::new(move |()| {
        let name = title.get_untracked().trim().to_owned();
        match words::bad_title(&name) {
            Some(sentence) => wrong.set(Some(sentence.to_owned())),
            None => begin(desk, go, name),
        }
    });
    let typed = move |text: String| {
        wrong.set(None);
        title.set(text);
    };
    view! {
        <Sheet>
            <Head title=words::new_build().to_owned()/>
            <Above>
                <Read name=words::new_build().to_owned()>
                    <Field
                        id="title"
                        label=words::what_is_it().to_owned()
                        value=title
                        error=wrong
                        on_input=Callback::new(typed)
                        on_enter=start
                    />
                    <p class="note">{words::more_can_wait()}</p>
                    {cautions::once(Signal::derive(move || of_title(&title.read())))}
                </Read>
            </Above>
            <Below>
                <Hand name=words::keys().to_owned()>
                    {form_keys(go, words::start_it(), start)}
                </Hand>
                <Places cell=1/>
            </Below>
        </Sheet>
    }
}

fn begin(desk: Desk, go: Go, title: String) {
    let (build, person) = (desk.fresh(), desk.fresh());
    let said = title.clone();
    desk.act_then(
        move |hand| {
            let on = On::At(hand.shop.zone.when(hand.now));
            let mut changes = vec![Change::write(build, Build::named(on, title.clone()))];
            if hand.shop.people.is_empty() {
                let me = Person {
                    on,
                    name: words::me().to_owned(),
                    paid: false,
                    rates: Vec::new(),
                    free: Vec::new(),
                };
                changes.push(Change::write(person, me));
            }
            changes
        },
        move |_| Marked::from(Mark { kind: words::build().to_owned(), what: said.clone(), second: None }),
        move |done| {
            if done.is_ok() {
                crate::shell::draft::done(desk, DRAFT);
                opened(desk, go, build);
            }
        },
    );
}

/// On the bench with it; and from the first build on the browser is asked never to clear what is kept.
fn opened(desk: Desk, go: Go, build: Id) {
    desk.wish.set(Some(Bearer::Build(build)));
    go.instead(&Place::Bench);
    if desk.now_read(|view| view.shop.builds.len()) == 1 {
        spawn_local(async {
            persist::ask().await;
        });
    }
}
