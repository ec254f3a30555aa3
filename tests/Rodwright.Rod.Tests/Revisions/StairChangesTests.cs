using Rodwright.Joinery;
using Rodwright.Joinery.Proof;
using Rodwright.Rod.Revisions;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Revisions;

public sealed class StairChangesTests
{
    private static readonly Job Before = Samples.Job("left-kite-low");

    [Fact]
    public void A_job_compared_with_itself_has_no_changes()
    {
        var changes = Changes(Before);
        Assert.True(changes.IsNone);
        Assert.Equal(RodJobs.Stair("left-kite-low").Kit.Parts.Length, changes.Same);
        Assert.True(changes.SameSheets > 30);
    }

    [Fact]
    public void A_new_title_alone_is_no_reason_to_make_anything_again()
    {
        var changes = Changes(Before with { Title = "Another name" });
        Assert.Empty(changes.Pieces);
        // The cover says it too.
        Assert.All(changes.Sheets, s => Assert.StartsWith("cover", s.Name, StringComparison.Ordinal));
    }

    [Fact]
    public void A_stair_ten_wider_has_treads_ten_longer_and_its_lower_newel_string_as_it_was()
    {
        var changes = Changes(Before with { Width = Before.Width + 10 });

        var straight = changes.Pieces.Where(p => p.Id is "tread-2" or "tread-9").ToList();
        Assert.Equal(2, straight.Count);
        foreach (var tread in straight)
        {
            var longer = Assert.Single(tread.Differences, d => d.What == "length of the board");
            Assert.Equal(10, longer.By!.Value, 1e-6);
        }
        Assert.DoesNotContain(changes.Pieces, p => p.Id == "newel-bottom");
        Assert.DoesNotContain(changes.Sheets, s => s.Title.Contains("Bottom newel", StringComparison.Ordinal));
        Assert.Contains(changes.Sheets, s => s is { Name: "plan", Kind: ChangeKind.Changed });
    }

    [Fact]
    public void Another_material_of_the_risers_changes_the_risers_alone()
    {
        var changes = Changes(Before with { Practice = Before.Practice with { RiserMaterial = "oak" } });
        Assert.NotEmpty(changes.Pieces);
        Assert.All(changes.Pieces, p => Assert.StartsWith("riser-", p.Id, StringComparison.Ordinal));
        Assert.All(changes.Pieces, p => Assert.Equal("oak instead of plywood", Assert.Single(p.Differences).Words));
        Assert.DoesNotContain(changes.Sheets, s => s.Title.Contains("string", StringComparison.OrdinalIgnoreCase) || s.Title.Contains("newel", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Deeper_housings_are_told_by_cut_and_depth()
    {
        var changes = Changes(Before with { Practice = Before.Practice with { Housing = Before.Practice.Housing + 2 } });
        var @string = changes.Pieces.Single(p => p.Id == "wall-string-1");
        var deeper = @string.Differences.Single(d => d.What == "depth of the housing of riser 2");
        Assert.True(deeper.IsCut);
        Assert.Equal(2, deeper.By!.Value, 1e-9);
        Assert.Equal(("12", "14"), (deeper.Before, deeper.Now));
    }

    [Fact]
    public void One_step_more_is_made_and_one_less_no_longer_needed()
    {
        var longer = Before with { Layout = Before.Layout with { Sequence = [.. Before.Layout.Sequence.SkipLast(1), new Flight(8)] } };

        var (more, fewer) = (Changes(longer), StairChanges.Of(Rod(longer), Rod(Before)));

        Assert.Equal(ChangeKind.Added, more.Pieces.Single(p => p.Id == "riser-14").Kind);
        Assert.Equal(ChangeKind.Removed, fewer.Pieces.Single(p => p.Id == "riser-14").Kind);
        Assert.Equal(more.Sheets.Count(s => s.Kind == ChangeKind.Added), fewer.Sheets.Count(s => s.Kind == ChangeKind.Removed));
        Assert.Equal(more.Same, fewer.Same);
    }

    [Fact]
    public void Paper_and_revision_do_not_make_a_sheet_another()
    {
        var rod = Rod(Before);
        Assert.True(StairChanges.Of(rod with { Style = rod.Style with { Date = "2020-01-01", Revision = "A" } }, rod with { Style = rod.Style with { Revision = "B" } }).IsNone);
    }

    private static StairChanges Changes(Job now) => StairChanges.Of(Rod(Before), Rod(now));

    private static RodJob Rod(Job job)
    {
        var stair = Stair.SetOut(job).Value!;
        return new(stair, stair.Prove(), RodJobs.Of("left-kite-low").Style);
    }
}
