//! Files named by an address.

use std::path::Path;
use vatsketch::file::path_of_address;

/// RFC 8089, appendix B; RFC 3986, section 2.1 for the space and for a letter beyond ASCII.
#[test]
fn an_address_means_a_file_of_this_machine() {
    for (named, meant) in [
        ("file:///path/to/file", "/path/to/file"),
        ("file://localhost/path/to/file", "/path/to/file"),
        ("file:///home/maker/my%20vat.vat.ron", "/home/maker/my vat.vat.ron"),
        ("file:///home/k%C3%A4se.vat.ron", "/home/käse.vat.ron"),
        ("plain.vat.ron", "plain.vat.ron"),
    ] {
        assert_eq!(path_of_address(Path::new(named)), Path::new(meant));
    }
}
