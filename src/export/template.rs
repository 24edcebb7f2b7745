//! The page template and the typesetter: one template, one piece of data, three fonts, and nothing from outside.

use super::ExportError;
use std::sync::LazyLock;
use typst::diag::{FileError, FileResult, SourceDiagnostic};
use typst::foundations::{Bytes, Datetime, Duration, Smart};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World};
use typst_layout::PagedDocument;
use typst_pdf::PdfOptions;

const TEMPLATE: &str = include_str!("../../resources/plan.typ");

const FONT_FILES: [&[u8]; 3] = [
    include_bytes!("../../resources/fonts/NotoSans-Regular.ttf"),
    include_bytes!("../../resources/fonts/NotoSans-Bold.ttf"),
    include_bytes!("../../resources/fonts/DejaVuSans.ttf"),
];

/// The fonts are parsed once: it takes longer than setting a page.
static FONTS: LazyLock<Vec<Font>> = LazyLock::new(|| FONT_FILES.iter().flat_map(|file| Font::iter(Bytes::new(*file))).collect());

/// Everything that the typesetter can see.
struct Desk {
    typst_library: LazyHash<Library>,
    book: LazyHash<FontBook>,
    template: Source,
    data_id: FileId,
    data: Bytes,
}

impl World for Desk {
    fn library(&self) -> &LazyHash<Library> {
        &self.typst_library
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &self.book
    }

    fn main(&self) -> FileId {
        self.template.id()
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        if id == self.template.id() { Ok(self.template.clone()) } else { Err(FileError::AccessDenied) }
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

/// Returns the PDF of the template filled with the data (JSON).
pub(super) fn typeset(data: Vec<u8>) -> Result<Vec<u8>, ExportError> {
    let desk = Desk {
        typst_library: LazyHash::new(Library::default()),
        book: LazyHash::new(FontBook::from_fonts(FONTS.iter())),
        template: Source::new(file_id("plan.typ")?, TEMPLATE.to_owned()),
        data_id: file_id("data.json")?,
        data: Bytes::new(data),
    };
    let document: PagedDocument = typst::compile(&desk).output.map_err(|errors| refused(&errors))?;
    let options = PdfOptions { creator: Smart::Custom(Some("Vatsketch".to_owned())), ..PdfOptions::default() };
    typst_pdf::pdf(&document, &options).map_err(|errors| refused(&errors))
}

fn file_id(name: &str) -> Result<FileId, ExportError> {
    let path = VirtualPath::new(name).map_err(|error| ExportError::Template { why: format!("{name}: {error:?}") })?;
    Ok(FileId::new(RootedPath::new(VirtualRoot::Project, path)))
}

fn refused(errors: &[SourceDiagnostic]) -> ExportError {
    let why = errors.iter().map(|error| error.message.as_str()).collect::<Vec<_>>().join("; ");
    ExportError::Template { why }
}
