//! Sheets of later versions: they say what will stand there, and offer nothing else.

use crate::dom::prelude::*;
use crate::{
    parts::{
        key::KeyLink,
        message::Message,
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
    },
    screens::cautions,
    shell::{Desk, Place, Tab, frame::Places, mark::LastMarkHere},
    words::builds as words,
};
use benchslate_core::journal::{
    Id, Kind,
    cautions::{Caution, filming},
};

/// Film of a build.
#[component]
pub fn LaterSheet(of: Id) -> impl IntoView {
    let desk = Desk::here();
    let title = Memo::new(move |_| {
        words::film_title(
            &desk.read(|view| view.shop.builds.get(&of).map(|it| it.title.clone()).unwrap_or_default()),
        )
    });
    view! {
        <Sheet>
            <Head title tight=true/>
            <Above>{not_drawn(title.into(), words::film_text(), filming())}</Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned()>
                    <Keys class="mid">
                        <KeyLink
                            label=words::film_length().to_owned()
                            note=words::film_length_note().to_owned()
                            href=Place::Add(Kind::Film, Some(of)).href()
                        />
                    </Keys>
                </Hand>
                <Places cell=1 of_build=(of, Some(Tab::Film))/>
            </Below>
        </Sheet>
    }
}

fn not_drawn(name: Signal<String>, text: &'static str, minds: Vec<Caution>) -> AnyView {
    view! {
        <Read name>
            <Message title=words::not_drawn_yet().to_owned() lines=Signal::stored(vec![text.to_owned()])/>
            {cautions::once_of(minds)}
        </Read>
    }
}
