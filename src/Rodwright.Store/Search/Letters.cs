using System.Collections.Frozen;

namespace Rodwright.Store.Search;

/// <summary>
/// Letters as somebody without that key would type them. Written out here because the program runs without the system's tables of languages, where taking
/// accents off does nothing; a test holds the list against those tables.
/// </summary>
internal static class Letters
{
    /// <summary>What is typed, then the small letters it stands for.</summary>
    private static readonly string[] Typed =
    [
        // Latin, accents off.
        "a àáâãäåāăąǎǟǡǻȁȃȧḁạảấầẩẫậắằẳẵặ", "b ḃḅḇ", "c çćĉċčḉ", "d ďḋḍḏḑḓ", "e èéêëēĕėęěȅȇȩḕḗḙḛḝẹẻẽếềểễệ", "f ḟ", "g ĝğġģǧǵḡ", "h ĥȟḣḥḧḩḫẖ",
        "i ìíîïĩīĭįİǐȉȋḭḯỉị", "j ĵǰ", "k ķǩḱḳḵ", "l ĺļľḷḹḻḽ", "m ḿṁṃ", "n ñńņňǹṅṇṉṋ", "o òóôõöōŏőơǒǫǭȍȏȫȭȯȱṍṏṑṓọỏốồổỗộớờởỡợ", "p ṕṗ", "r ŕŗřȑȓṙṛṝṟ",
        "s śŝşšșṡṣṥṧṩ", "t ţťțṫṭṯṱẗ", "u ùúûüũūŭůűųưǔǖǘǚǜȕȗṳṵṷṹṻụủứừửữự", "v ṽṿ", "w ŵẁẃẅẇẉẘ", "x ẋẍ", "y ýÿŷȳẏẙỳỵỷỹ", "z źżžẑẓẕ", "ʒ ǯ",
        // Greek, accents and breathings off; the end of a word as its middle. Escaped: letters that a text editor would turn into others here.
        "α άἀἁἂἃἄἅἆἇὰᾀᾁᾂᾃᾄᾅᾆᾇᾰᾱᾲᾳᾴᾶᾷ\u1f71", "ε έἐἑἒἓἔἕὲ\u1f73", "η ήἠἡἢἣἤἥἦἧὴᾐᾑᾒᾓᾔᾕᾖᾗῂῃῄῆῇ\u1f75", "ι ΐίϊἰἱἲἳἴἵἶἷὶιῐῑῒῖῗ\u1f77\u1fd3", "ο όὀὁὂὃὄὅὸ\u1f79",
        "ρ ῤῥ", "σ ς", "υ ΰϋύὐὑὒὓὔὕὖὗὺῠῡῢῦῧ\u1f7b\u1fe3", "ω ώὠὡὢὣὤὥὦὧὼᾠᾡᾢᾣᾤᾥᾦᾧῲῳῴῶῷ\u1f7d", "ϒ ϓϔ",
        // Cyrillic, marks off.
        "а ӑӓ", "г ѓ", "е ѐёӗ", "ж ӂӝ", "з ӟ", "и йѝӣӥ", "і ї", "к ќ", "о ӧ", "у ўӯӱӳ", "ч ӵ", "ы ӹ", "э ӭ", "ѵ ѷ", "ә ӛ", "ө ӫ",
        // Letters of their own that have a usual spelling.
        "ae æǣǽ", "d đð", "h ħ", "i ı", "ij ĳ", "l ł", "n ŋ", "o øǿ", "oe œ", "s ſẛ", "ss ß", "t ŧ", "th þ",
        // Marks that a word processor puts in the place of a key.
        "' ‘’ʼ′", "\" “”″", "- ‐‑‒–—−", "x ×",
    ];

    /// <summary>What a letter is typed as, for those that are not typed as themselves.</summary>
    public static FrozenDictionary<char, string> TypedAs { get; } = Typed
        .Select(line => (Key: line[..line.IndexOf(' ', StringComparison.Ordinal)], Letters: line[(line.IndexOf(' ', StringComparison.Ordinal) + 1)..]))
        .SelectMany(line => line.Letters.Select(letter => KeyValuePair.Create(letter, line.Key)))
        .ToFrozenDictionary();
}
