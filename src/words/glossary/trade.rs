//! The words of the trade that a newcomer may not know. They are everyday words to a maker, so a label's tip prefers an exact word to them.

use super::term::Term;

/// Every word of the trade that is explained, in the order of the alphabet.
pub const TRADE_WORDS: &[Term] = &[
    trade("bath", "The warm water around the pot, which warms the milk slowly and keeps it warm."),
    trade("brine", "Salt dissolved in water. The water inside a salted cheese is one too."),
    trade(
        "buffering",
        "How much acid milk and cheese take up before they become more sour. The more of it, the more acid a given pH needs.",
    ),
    trade(
        "calcium chloride",
        "A salt of calcium, sold as flakes or in drops. A little of it helps pasteurised milk to set firmly.",
    ),
    trade("caution", "Something to change or to watch, less grave than a serious warning."),
    trade("clotting", "What rennet does first: the milk begins to set. It is not yet firm enough to cut."),
    trade("culture", "Chosen bacteria that turn the sugar of milk into lactic acid, and so sour milk and curd."),
    trade("curd", "What rennet makes of milk: a soft gel of casein that holds fat and whey. Drained, it is the cheese."),
    trade(
        "diffusion",
        "How water, salt and acid spread through a cheese by themselves, from where there is more to where there is less.",
    ),
    trade("drain", "To let whey run out of the curd through the holes of the mould."),
    trade("drip", "Whey that leaves the curd while it drains."),
    trade("dry matter", "Everything in the cheese but its water: fat, protein, minerals, salt."),
    trade("GDL", "Glucono-delta-lactone, a powder that turns into an acid over some hours and so sours the milk evenly."),
    trade("germ", "A microbe. The program follows some of those that make people ill."),
    trade(
        "humidity",
        "How much vapour the air holds, as a share of the most that it can hold at its temperature. Dry air dries a cheese faster.",
    ),
    trade("lactic acid", "The acid that a culture makes of the sugar of milk."),
    trade("lactose", "The sugar of milk, which a culture turns into lactic acid."),
    trade("ladle", "To lift the curd from the vat into the moulds with a flat spoon, layer by layer."),
    trade("mesophilic", "Of a culture: one that works best when the milk is lukewarm."),
    trade("moisture", "Water as a share of the weight of the whole cheese."),
    trade("mould", "A basket with holes, in which the curd drains and takes its shape."),
    trade("note", "The mildest mark of a plan: worth knowing, and nothing has to be changed for it."),
    trade(
        "pasteurised",
        "Heated long and hot enough to kill most germs that make people ill. Spores survive it, and new germs can come in later.",
    ),
    trade(
        "pH",
        "How sour something is: pure water has seven, and a lower number is more sour. Each whole number less means ten times as much free acid.",
    ),
    trade(
        "pH meter",
        "An instrument that measures how sour something is. Calibrate it with two solutions of known pH before you trust it.",
    ),
    trade("pinned", "Of a choice: a target leaves it alone."),
    trade(
        "potential growth",
        "How far germs could grow by the model if they were there from the start. It compares designs; it measures nothing.",
    ),
    trade("rennet", "An enzyme that makes milk set. Bottles differ in strength, which is on the label."),
    trade("ripening", "The time in which a culture begins to sour the warm milk, before the rennet goes in."),
    trade("skimmed milk", "Milk with nearly all of its fat taken out. Added to rich milk, it brings the fat down."),
    trade("slow cheese", "One that sours more slowly than nine of ten trial runs. What can hurt is judged by it."),
    trade("soak", "The time in which a cheese lies in vinegar."),
    trade("tenfold step", "Ten times as many germs. Two steps are a hundred times as many."),
    trade("thermophilic", "Of a culture: one that works best when the milk is hot to the hand."),
    trade("toxin", "A poison that some germs make. It may stay when the germs themselves are dead."),
    trade("tray", "A rack or a mesh on which cheeses lie to dry."),
    trade("turn", "To put a cheese upside down, so that it drains and dries alike on both faces."),
    trade("unmoulding", "Taking the drained cheeses out of their moulds."),
    trade("vat", "The pot in which milk becomes curd, and all that is made of it in one go."),
    trade("whey", "The yellow-green liquid that leaves the curd: water, milk sugar, minerals and a little protein."),
];

/// Returns a word of the trade; each is the one word for its thing in every text already.
const fn trade(term: &'static str, means: &'static str) -> Term {
    Term { term, means, instead_of: &[] }
}
