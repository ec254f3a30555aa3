using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Microsoft.EntityFrameworkCore;
using Rodwright.Store.Search;
using Xunit;

namespace Rodwright.Store.Tests;

/// <summary>How letters are folded for searching.</summary>
public class SearchTextTests
{
    [Fact]
    public void Every_letter_with_accents_folds_to_the_letter_without()
    {
        // The runtime's own tables, which the shipped program does without, say which letters those are.
        var letters = 0;
        foreach (var c in Enumerable.Range(0, 0xffff).Select(c => (char)c).Where(char.IsLetter))
        {
            var apart = c.ToString().Normalize(NormalizationForm.FormD);
            if (apart.Length < 2 || apart[1..].Any(a => a is < '\u0300' or > '\u036f')) continue;
            letters++;
            Assert.True(SearchText.Fold(c.ToString()) == SearchText.Fold(apart[..1]), $"{c} folds to {SearchText.Fold(c.ToString())}, {apart[0]} to {SearchText.Fold(apart[..1])}");
            Assert.Equal(SearchText.Fold(c.ToString()), SearchText.Fold(apart));
        }
        Assert.True(letters > 750, $"only {letters} letters were looked at");
    }

    [Fact]
    public void Folding_twice_is_folding_once_and_case_does_not_matter()
    {
        foreach (var c in Enumerable.Range(1, 0xd7ff).Select(c => ((char)c).ToString()))
        {
            var folded = SearchText.Fold(c);
            Assert.Equal(folded, SearchText.Fold(folded));
            if (c.ToUpperInvariant().ToLowerInvariant() == c) Assert.Equal(folded, SearchText.Fold(c.ToUpperInvariant()));
        }
    }

    [Theory]
    [InlineData("Ångström ÉCOLE Straße", "angstrom ecole strasse")]
    [InlineData("ŁÓDŹ Ølgård Þór Œuvre", "lodz olgard thor oeuvre")]
    [InlineData("İstanbul IĞDIR ıslak", "istanbul igdir islak")]
    [InlineData("ὈΔΥΣΣΕΎΣ Йод", "οδυσσευσ иод")]
    [InlineData("O’Brien “5–6” 860×2600", "o'brien \"5-6\" 860x2600")]
    [InlineData("𐐀 漢字 한글 日本語", "𐐨 漢字 한글 日本語")]
    public void Known_words_fold_as_somebody_would_type_them(string text, string folded) => Assert.Equal(folded, SearchText.Fold(text));

    [Theory]
    [InlineData("", "")]
    [InlineData(" \t\u00a0\u3000", "")]
    [InlineData("Stair stairs STAIR", "stairs")]
    [InlineData("b a b", "b a")]
    [InlineData("abc bc c ab", "abc")]
    public void Words_are_told_apart_and_those_within_others_left_out(string text, string words) =>
        Assert.Equal(words.Split(' ', StringSplitOptions.RemoveEmptyEntries).ToImmutableArray(), SearchText.Words(text));

    [Fact]
    public async Task The_program_as_shipped_folds_as_the_tests_do()
    {
        // It runs without the system's tables of languages; the tests run with them.
        Assert.NotEqual("invariant", CultureInfo.GetCultureInfo("de-DE").TwoLetterISOLanguageName);
        await using var store = new SqliteTestStore();
        // Not those that are newer than the tables of some systems.
        var letters = string.Concat(Enumerable.Range(0x20, 0x2500).Where(c => c is < 0x1c80 or > 0x1dff).Where(c => char.IsLetter((char)c) || char.IsPunctuation((char)c)).Select(c => (char)c));
        using (var saver = SaverProcess.Start(store.File, "--title", letters))
        {
            await saver.End();
            Assert.Equal((0, ""), (saver.Exit, saver.Error));
        }
        await store.Open();
        await using var context = store.Look();
        var job = await context.Jobs.SingleAsync();
        Assert.Equal(letters, job.Title);
        var expected = SearchText.Of(job.Title, job.Summary);
        Assert.Equal(expected, job.Search);
    }
}
