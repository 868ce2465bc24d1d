//! An element, or a component, with what is in it.

use crate::nodes;
use proc_macro2::TokenStream;
use quote::quote;
use rstml::Infallible;
use rstml::node::{KeyedAttribute, NodeAttribute, NodeElement};
use syn::{Expr, Lit};

/// The names that begin a drawing, or part of one that is put into it by code.
const DRAWN: [&str; 13] = [
    "svg", "g", "defs", "pattern", "path", "rect", "line", "circle", "polyline", "polygon", "ellipse", "use",
    "text",
];

/// The element as a view; `drawn` where it stands inside a drawing.
pub fn view(it: &NodeElement<Infallible>, drawn: bool) -> TokenStream {
    let name = it.open_tag.name.to_string();
    let own = name.rsplit("::").next().unwrap_or_default();
    if own.starts_with(|first: char| first.is_ascii_uppercase()) {
        component(it)
    } else {
        element(it, &name, drawn || DRAWN.contains(&name.as_str()))
    }
}

fn attributes(it: &NodeElement<Infallible>) -> impl Iterator<Item = Result<&KeyedAttribute, TokenStream>> {
    it.open_tag.attributes.iter().map(|attribute| match attribute {
        NodeAttribute::Attribute(it) => Ok(it),
        NodeAttribute::Block(_) => Err(quote! { compile_error!("no spread attributes") }),
    })
}

fn component(it: &NodeElement<Infallible>) -> TokenStream {
    let name = &it.open_tag.name;
    let props = attributes(it).map(|attribute| {
        let attribute = match attribute {
            Ok(attribute) => attribute,
            Err(why) => return why,
        };
        let key = &attribute.key;
        match attribute.value() {
            Some(value) => quote! { .#key(#value) },
            None => quote! { .#key(#key) },
        }
    });
    let children = (!it.children.is_empty()).then(|| {
        let children = nodes::view(&it.children, false);
        quote! { .children(crate::dom::children(move || #children)) }
    });
    quote! {
        crate::dom::component(::leptos::component::component_view(
            #name,
            ::leptos::component::component_props_builder(&#name) #(#props)* #children .build(),
        ))
    }
}

fn element(it: &NodeElement<Infallible>, name: &str, drawn: bool) -> TokenStream {
    let begin = if drawn {
        quote! { crate::dom::Element::drawn(#name) }
    } else {
        quote! { crate::dom::Element::new(#name) }
    };
    let attributes = attributes(it).map(|it| it.map_or_else(|why| why, attribute));
    let children = (!it.children.is_empty()).then(|| {
        let each = it.children.iter().map(|child| nodes::view(std::slice::from_ref(child), drawn));
        quote! { #(.child(#each))* }
    });
    quote! { #begin #(#attributes)* #children .view() }
}

fn attribute(it: &KeyedAttribute) -> TokenStream {
    let name = it.key.to_string();
    let value = match it.value() {
        Some(value) => quote! { #value },
        None => quote! { true },
    };
    match name.split_once(':') {
        Some(("on", event)) => quote! { .on(#event, #value) },
        Some(("class", class)) => quote! { .class(#class, #value) },
        Some(("style", property)) => quote! { .style(#property, #value) },
        Some(("prop", property)) => quote! { .prop(#property, #value) },
        Some(_) => quote! { compile_error!("on:, class:, style: and prop: only") },
        None if name == "node_ref" => quote! { .node_ref(#value) },
        None => match text(it) {
            Some(text) => quote! { .set(#name, #text) },
            None => quote! { .attr(#name, #value) },
        },
    }
}

/// The value that is a plain text: it is set once.
fn text(it: &KeyedAttribute) -> Option<String> {
    match it.value()? {
        Expr::Lit(lit) => match &lit.lit {
            Lit::Str(text) => Some(text.value()),
            _ => None,
        },
        _ => None,
    }
}
