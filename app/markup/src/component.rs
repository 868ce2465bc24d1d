//! `#[component]`: Leptos's own, around a body that must draw a `dom::AnyView`.

use proc_macro2::TokenStream;
use quote::quote;
use syn::{ItemFn, parse_quote};

/// The body's type is said inside, as outside it is hidden behind `impl IntoView`.
pub fn component(mut function: ItemFn) -> TokenStream {
    let body = &function.block;
    function.block = parse_quote! {{
        let draw = move || -> crate::dom::AnyView { crate::dom::Draw::draw(#body) };
        draw()
    }};
    quote! { #[::leptos::component] #function }
}
