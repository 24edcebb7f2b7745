//! One line with its check behind it.
//!
//! The check is the CRC-32 of ISO 3309 and IEEE 802.3: it finds every line of which one place of up to four bytes was changed, and of all others
//! all but one in four thousand million; it is short enough to stand on the line, and other programs know it. It stands in a comment, so that a
//! line without its check is plain RON.

/// What parts a line from its check.
const BEFORE: &str = " // ";

/// Returns a line with its check, and the end of the line.
pub(super) fn with_check(body: &str) -> String {
    format!("{body}{BEFORE}{:08x}\n", crc32fast::hash(body.as_bytes()))
}

/// Returns a line without its check; none if the check is not there or does not fit.
pub(super) fn checked(line: &[u8]) -> Option<&str> {
    let (body, check) = std::str::from_utf8(line).ok()?.rsplit_once(BEFORE)?;
    let fits = check == format!("{:08x}", crc32fast::hash(body.as_bytes()));
    fits.then_some(body)
}
