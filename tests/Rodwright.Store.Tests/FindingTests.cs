using CsCheck;
using Rodwright.Properties;
using Rodwright.Workshop.Shelf;
using Xunit;

namespace Rodwright.Store.Tests;

/// <summary>What is looked for is found: the same by every kind of store.</summary>
public class FindingTests
{
    public static TheoryData<StoreKind> Kinds => TestStore.Kinds;

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Words_are_found_anywhere_in_any_case_and_order_with_or_without_accents(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var shelf = await store.Open();
        await shelf.Add(Drafts.Made("Escalier à noyau, Hélène Ångström", "13 risers, left hand, 3 tapered steps"));
        await shelf.Add(Drafts.Made("O’Brien’s \"Straße\" Łódź Ølgård ДОЖДЬ Йода Ἀθήνα", "LANDING"));

        string[] first = ["", "  \t\n ", "escalier", "ESCALIER", "noyau helene", "HÉLÈNE", "he\u0301le\u0300ne", "angstrom", "ngstr", "steps tapered noyau", "13", "a", "hand, 3", "à à A"];
        string[] second = ["o'brien", "O’BRIEN’S", "strasse", "STRASSE straße", "lodz", "ØLGÅRD", "olgard", "дождь", "иода", "αθηνα", "ΑΘΉΝΑ", "landing", "\"str"];
        string[] neither = ["escalier landing", "noyauhelene", "angstrom13", "x13", "steps,", "ÅngströmX", "O`Brien"];
        foreach (var words in first) Assert.Contains("Escalier", (await shelf.Find(new(words))).Cards[^1].Title, StringComparison.Ordinal);
        foreach (var words in second) Assert.Equal(("O", 1), (await Only(shelf, words)));
        foreach (var words in neither) Assert.Equal(0, (await shelf.Find(new(words))).Total);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task No_character_means_anything_but_itself(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var shelf = await store.Open();
        string[] marks = ["%", "_", "\\", "'", "''", "\"", "[a]", "*", "?", "^", "--", ";", "{0}", "$1", "@p", "\\%", "%%", "<b>", "&amp;", "\u0001", "😀", "𝄞"];
        foreach (var mark in marks) await shelf.Add(Drafts.Made($"before{mark}after", "plain"));
        await shelf.Add(Drafts.Made("beforeXafter", "plain"));
        foreach (var mark in marks)
        {
            var expected = marks.Where(m => m.Contains(mark, StringComparison.Ordinal)).Select(m => $"before{m}after");
            Assert.Equal(expected.Order(StringComparer.Ordinal), (await shelf.Find(new(mark))).Cards.Select(c => c.Title).Order(StringComparer.Ordinal));
            Assert.Equal($"before{mark}after", Assert.Single((await shelf.Find(new($"before{mark}after"))).Cards).Title);
        }
        // What cannot be kept is on no job.
        foreach (var none in new[] { "\0", "before\0after", "\ud83d", "before \ude00" }) Assert.Equal(0, (await shelf.Find(new(none))).Total);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task The_newest_change_comes_first_and_pages_do_not_overlap(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var clock = new TestClock();
        var shelf = await store.Open(clock);
        var ids = new List<Guid>();
        for (var n = 0; n < 25; n++)
        {
            // Every three of them in the same instant.
            if (n % 3 == 0) clock.Now = clock.Now.AddTicks(10);
            ids.Add((await shelf.Add(Drafts.Made($"job {n}"))).Id);
        }
        clock.Now = clock.Now.AddDays(1);
        await shelf.Save(ids[4], 1, Drafts.Edit());
        await shelf.Name(ids[5], 1, "a name is no change");

        var all = (await shelf.Find(new(Take: 200))).Cards;
        Assert.Equal(25, all.Length);
        Assert.Equal(ids[4], all[0].Id);
        Assert.Equal(all.OrderByDescending(c => c.ChangedAt).ThenByDescending(c => c.Id.ToString(), StringComparer.Ordinal), all);
        var paged = new List<JobCard>();
        for (var skip = 0; skip < 30; skip += 4)
        {
            var page = await shelf.Find(new(Skip: skip, Take: 4));
            Assert.Equal(25, page.Total);
            Assert.Equal(Math.Clamp(25 - skip, 0, 4), page.Cards.Length);
            paged.AddRange(page.Cards);
        }
        Assert.Equal(all, paged);
        Assert.Equal(4, (await shelf.Find(new("JOB", Skip: 20))).Cards.Length); // all but the one that is called otherwise now
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_job_is_found_by_what_it_is_called_now(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var shelf = await store.Open();
        var job = await shelf.Add(Drafts.Made("Barn stair"));
        await shelf.Save(job.Id, 1, Drafts.Edit(title: "Mill stair"));
        Assert.Equal(0, (await shelf.Find(new("barn"))).Total);
        Assert.Equal("Mill stair", Assert.Single((await shelf.Find(new("mill"))).Cards).Title);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task As_many_words_as_a_question_may_hold_are_all_looked_for(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var shelf = await store.Open();
        var words = string.Join(' ', Enumerable.Range(0x4e00, ShelfQuery.MostCharacters / 2).Select(c => ((char)c).ToString()));
        await shelf.Add(Drafts.Made(words));
        await shelf.Add(Drafts.Made(words[..^1]));
        Assert.Equal(words, Assert.Single((await shelf.Find(new(words))).Cards).Title);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Whatever_a_text_holds_it_comes_back_and_is_found(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var shelf = await store.Open();
        await Hostile.Select(Hostile, Hostile).HoldsAsync(async texts =>
        {
            var (title, summary, text) = texts;
            var job = await shelf.Add(new(RevisionKind.Made, text, title, summary, title, "x" + summary));
            Assert.Equal((title, summary, "x" + summary), ((await shelf.Card(job.Id))!.Title, (await shelf.Card(job.Id))!.Summary, job.ChangedBy));
            var read = (await shelf.Open(job.Id, 1))!;
            Assert.Equal((text, title, "x" + summary), (read.Text, read.Note.Words, read.Note.By));
            Assert.True(await shelf.Name(job.Id, 1, title));
            Assert.Equal(title, (await shelf.Revisions(job.Id))[0].Name);
            var query = title + " " + summary;
            if (query.Length <= ShelfQuery.MostCharacters) Assert.Contains(job.Id, (await shelf.Find(new(query, Take: 200))).Cards.Select(c => c.Id));
            await shelf.Archive(job.Id, true);
        }, iter: 150);
    }

    [Fact]
    public async Task Both_kinds_of_store_find_the_same()
    {
        await using var sqlite = await TestStore.New(StoreKind.Sqlite);
        await using var postgres = await TestStore.New(StoreKind.Postgres);
        var (left, right) = (await sqlite.Open(), await postgres.Open());
        var random = new Random(20260302);
        string Words(int most) => string.Join(' ', Enumerable.Range(0, random.Next(most + 1)).Select(_ => Pieces[random.Next(Pieces.Length)]));
        for (var n = 0; n < 150; n++)
        {
            var draft = Drafts.Made(Words(4), Words(4));
            await left.Add(draft);
            await right.Add(draft);
        }
        var found = 0;
        for (var n = 0; n < 300; n++)
        {
            var query = new ShelfQuery(Words(3), Take: 200);
            var (l, r) = (await left.Find(query), await right.Find(query));
            Assert.Equal(l.Total, r.Total);
            Assert.Equal(l.Cards.Select(c => (c.Title, c.Summary)), r.Cards.Select(c => (c.Title, c.Summary)));
            found += l.Total;
        }
        Assert.True(found > 300, $"the questions found {found} jobs: too few to mean anything");
    }

    /// <summary>What has gone wrong somewhere before: quotes, patterns, markup, code, paths, accents apart, right to left, letters that change their number of bytes.</summary>
    private static readonly string[] Pieces =
    [
        "'", "''", "\"", "\\", "%", "_", "\\%", "'; DROP TABLE jobs; --", "<script>alert(1)</script>", "&lt;", "{0}", "${x}", "@p0", "../../etc/passwd", "C:\\con", "\u202e",
        "\u200b", "\u00a0", "\ufeff", "\r\n", "\t", "\u0001", "\u007f", "\u0085", "é", "e\u0301", "ẞ", "ß", "İ", "ı", "I", "i", "Ǆ", "ﬁ", "ſ", "Ω", "Å", "😀", "👩‍🔧", "𝄞", "𐐀", "𐐨",
        "漢字", "한글", "עברית", "العربية", "हिन्दी", "\uffff", "\u0300", "stair", "STAIR", "Stairs", "860 × 2600",
    ];

    private static readonly Gen<string> Piece = Gen.Int[0, Pieces.Length - 1].Select(n => Pieces[n]);

    private static readonly Gen<string> Hostile = Gen.OneOf(
        Piece.Array[0, 8].Select(string.Concat),
        Piece.Array[0, 8].Select(p => string.Join(' ', p)),
        Gen.Int[1, 0x10ffff].Where(c => c is < 0xd800 or > 0xdfff).Array[0, 20].Select(cs => string.Concat(cs.Select(char.ConvertFromUtf32))));

    private static async Task<(string, int)> Only(JobShelf shelf, string words)
    {
        var page = await shelf.Find(new(words));
        return (page.Cards is [var card] ? card.Title[..1] : words, page.Total);
    }
}
