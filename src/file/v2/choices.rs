//! The words of format 2 for the choices that format 1 did not have, frozen like the rest of the format.

use crate::file::frozen::saved_choices;

saved_choices! {
    VinegarBy { PerGram = "per_gram", Cover = "cover" }
    JarLay { Flat = "flat", OnEdge = "on_edge" }
    KeptIn { Vinegar = "vinegar", Oil = "oil", Bare = "bare" }
}
