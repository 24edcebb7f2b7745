//! The page templates and the typesetter: a template, one piece of data, three fonts, and nothing from outside.

use super::ExportError;
use super::fonts::{FONTS, printed};
use serde::Serialize;
use typst::diag::{FileError, FileResult, SourceDiagnostic};
use typst::foundations::{Bytes, Datetime, Duration, Smart};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World};
use typst_layout::PagedDocument;
use typst_pdf::PdfOptions;

/// What is set.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Main {
    /// The whole plan.
    Plan,
    /// One curve.
    Curve,
    /// Two designs side by side.
    Comparison,
    /// The label of a jar.
    Label,
}

impl Main {
    const fn name(self) -> &'static str {
        match self {
            Self::Plan => "plan.typ",
            Self::Curve => "curve.typ",
            Self::Comparison => "comparison.typ",
            Self::Label => "label.typ",
        }
    }
}

/// The templates, by the names under which they call each other.
const TEMPLATES: [(&str, &str); 11] = [
    ("plan.typ", include_str!("../../resources/plan.typ")),
    ("parts.typ", include_str!("../../resources/parts.typ")),
    ("kitchen.typ", include_str!("../../resources/kitchen.typ")),
    ("shopping.typ", include_str!("../../resources/shopping.typ")),
    ("troubles.typ", include_str!("../../resources/troubles.typ")),
    ("labels.typ", include_str!("../../resources/labels.typ")),
    ("label.typ", include_str!("../../resources/label.typ")),
    ("reading.typ", include_str!("../../resources/reading.typ")),
    ("curve.typ", include_str!("../../resources/curve.typ")),
    ("comparison.typ", include_str!("../../resources/comparison.typ")),
    ("chart.typ", include_str!("../../resources/chart.typ")),
];

/// Drawings for which parts that did not change are kept in memory; a window may draw thousands.
const KEPT_DRAWINGS: usize = 4;

/// Everything that the typesetter can see.
struct Typesetting {
    typst_library: LazyHash<Library>,
    book: LazyHash<FontBook>,
    main: FileId,
    templates: Vec<Source>,
    data_id: FileId,
    data: Bytes,
}

impl World for Typesetting {
    fn library(&self) -> &LazyHash<Library> {
        &self.typst_library
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &self.book
    }

    fn main(&self) -> FileId {
        self.main
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        self.templates.iter().find(|template| template.id() == id).cloned().ok_or(FileError::AccessDenied)
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        if id == self.data_id { Ok(self.data.clone()) } else { Err(FileError::AccessDenied) }
    }

    fn font(&self, index: usize) -> Option<Font> {
        FONTS.get(index).cloned()
    }

    fn today(&self, _offset: Option<Duration>) -> Option<Datetime> {
        None
    }
}

/// Returns the pages of a template filled with data.
pub(super) fn set(main: Main, data: &impl Serialize) -> Result<PagedDocument, ExportError> {
    let refused_data = |error: serde_json::Error| ExportError::Data { why: error.to_string() };
    let data = serde_json::to_vec(&printed(serde_json::to_value(data).map_err(refused_data)?)).map_err(refused_data)?;
    let templates = TEMPLATES.into_iter().map(|(name, text)| Ok(Source::new(file_id(name)?, text.to_owned())));
    let desk = Typesetting {
        typst_library: LazyHash::new(Library::default()),
        book: LazyHash::new(FontBook::from_fonts(FONTS.iter())),
        main: file_id(main.name())?,
        templates: templates.collect::<Result<_, _>>()?,
        data_id: file_id("data.json")?,
        data: Bytes::new(data),
    };
    let document = typst::compile(&desk).output.map_err(|errors| refused(&errors));
    typst::comemo::evict(KEPT_DRAWINGS);
    document
}

/// Returns pages as a PDF.
pub(super) fn pdf(document: &PagedDocument) -> Result<Vec<u8>, ExportError> {
    let options = PdfOptions { creator: Smart::Custom(Some("Vatsketch".to_owned())), ..PdfOptions::default() };
    typst_pdf::pdf(document, &options).map_err(|errors| refused(&errors))
}

fn file_id(name: &str) -> Result<FileId, ExportError> {
    let path =
        VirtualPath::new(name).map_err(|_| ExportError::Template { why: format!("{name} is not a path within the templates") })?;
    Ok(FileId::new(RootedPath::new(VirtualRoot::Project, path)))
}

fn refused(errors: &[SourceDiagnostic]) -> ExportError {
    let why = errors.iter().map(|error| error.message.as_str()).collect::<Vec<_>>().join("; ");
    ExportError::Template { why }
}
