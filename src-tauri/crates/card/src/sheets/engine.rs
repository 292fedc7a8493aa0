//! Typst, with our fonts and templates and nothing else: no file, no package, no font of the system.

use std::sync::LazyLock;

use serde::Serialize;
use typst::diag::SourceDiagnostic;
use typst::foundations::{Content, Dict, IntoValue, Value};
use typst_as_lib::{TypstAsLibError, TypstEngine};
use typst_layout::PagedDocument;

use super::{SheetModel, SheetOptions, SheetSize, symbol, text};
use crate::CardError;

pub(super) const REGULAR: &[u8] = include_bytes!("../../sheets/fonts/AtkinsonHyperlegibleNext-Regular.ttf");
const BOLD: &[u8] = include_bytes!("../../sheets/fonts/AtkinsonHyperlegibleNext-Bold.ttf");
const LOOK: &str = include_str!("../../sheets/look.typ");
const PARTS: &str = include_str!("../../sheets/parts.typ");
const PLOT: &str = include_str!("../../sheets/plot.typ");
const ID1: &str = include_str!("../../sheets/id1.typ");
const A6: &str = include_str!("../../sheets/a6.typ");
const A5: &str = include_str!("../../sheets/a5.typ");
const A4: &str = include_str!("../../sheets/a4.typ");
const BRIEF: &str = include_str!("../../sheets/brief.typ");
const REPORT: &str = include_str!("../../sheets/report.typ");

/// The templates by the names under which they know each other.
const TEMPLATES: [(&str, &str); 9] = [
    ("look.typ", LOOK),
    ("parts.typ", PARTS),
    ("plot.typ", PLOT),
    ("id1.typ", ID1),
    ("a6.typ", A6),
    ("a5.typ", A5),
    ("a4.typ", A4),
    ("brief.typ", BRIEF),
    ("report.typ", REPORT),
];

/// Parsed fonts and templates serve every sheet; what Typst remembers is dropped after a few more sheets.
static ENGINE: LazyLock<TypstEngine> = LazyLock::new(|| {
    TypstEngine::builder()
        .fonts([REGULAR, BOLD])
        .with_static_source_file_resolver(TEMPLATES)
        .comemo_evict_max_age(Some(4))
        .build()
});

/// Sets the sheet.
pub fn set(model: &SheetModel, options: &SheetOptions) -> Result<PagedDocument, CardError> {
    let template = match options.size {
        SheetSize::Id1 => "id1.typ",
        SheetSize::A6 => "a6.typ",
        SheetSize::A5 => "a5.typ",
        SheetSize::A4 => "a4.typ",
    };
    typeset(template, inputs(model, options)?)
}

/// Sets a template with its inputs.
pub fn typeset(template: &str, inputs: Dict) -> Result<PagedDocument, CardError> {
    let compiled = ENGINE.compile_with_input(template, inputs);
    compiled.output.map_err(|fault| match fault {
        TypstAsLibError::TypstSource(faults) => refused(&faults),
        other => CardError::Setting(other.to_string()),
    })
}

/// The first of Typst's complaints.
pub fn refused(faults: &[SourceDiagnostic]) -> CardError {
    CardError::Setting(faults.first().map(|fault| fault.message.to_string()).unwrap_or_default())
}

/// A model as JSON, its texts made printable, and its language one that Typst takes.
pub fn printable(model: &impl Serialize, lang: &str) -> Result<String, CardError> {
    let mut json = serde_json::to_value(model).map_err(|fault| unwritten(&fault))?;
    text::make_printable(&mut json, lang);
    json["lang"] = text::primary_language(lang).into();
    Ok(json.to_string())
}

fn unwritten(fault: &serde_json::Error) -> CardError {
    CardError::Setting(fault.to_string())
}

/// The model and the layout as JSON, and the square as a shape.
fn inputs(model: &SheetModel, options: &SheetOptions) -> Result<Dict, CardError> {
    let mut inputs = Dict::new();
    inputs.insert("model".into(), printable(model, &model.lang)?.into_value());
    let layout = serde_json::to_string(&options.layout()).map_err(|fault| unwritten(&fault))?;
    inputs.insert("layout".into(), layout.into_value());
    inputs.insert("square".into(), Value::Content(square(model, options.size)));
    Ok(inputs)
}

/// The square as a shape, as large as a card of this size has it.
pub fn square(model: &SheetModel, size: SheetSize) -> Content {
    let square = model.square.square();
    symbol::draw(square, size.module_um(square.side() + 2 * crate::QUIET_ZONE))
}
