using Rodwright.Drawings.Paper;
using Rodwright.Rod.Board;
using Rodwright.Rod.Sheets;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Board;

public sealed class PaperFitTests
{
    public static TheoryData<string> All => Boards.Samples;

    [Theory, MemberData(nameof(All))]
    public void Larger_sheets_hold_the_rod_larger_and_strings_on_fewer_pages(string sample)
    {
        var fits = PaperFit.All(RodJobs.Of(sample)).ToList();
        string[] names = Samples.Job(sample).Units.IsInches ? ["Letter", "Tabloid", "Arch C", "Arch D", "Arch E"] : ["A4", "A3", "A2", "A1", "A0"];
        Assert.Equal([.. names, "roll 610", "roll 914"], fits.Select(f => f.Paper.Name));
        for (var i = 1; i < 5; i++)
        {
            Assert.True((fits[i].Rod?.Ratio ?? 1000) <= (fits[i - 1].Rod?.Ratio ?? 1000));
            Assert.All(fits[i].Strings.Zip(fits[i - 1].Strings), p => Assert.True(p.First.Pages <= p.Second.Pages));
        }
        Assert.All(fits, f => Assert.All(f.Strings, s => Assert.True(s.Pages > 0)));
    }

    [Theory, MemberData(nameof(All))]
    public void The_rod_is_drawn_at_the_scale_told_and_not_at_the_next_larger_one(string sample)
    {
        foreach (var fit in PaperFit.All(RodJobs.Of(sample)).Where(f => f.Rod is not null))
        {
            var rod = RodJobs.Of(sample) with { Style = new(fit.Paper, fit.Rod, "1 March") };
            Assert.Equal(fit.Rod, RodSheets.Make(rod).Single().Scale);
            var larger = Scale.UsualIn(rod.Units).LastOrDefault(s => s.Ratio < fit.Rod!.Ratio);
            if (larger is not null) Assert.DoesNotContain(RodSheets.Make(rod with { Style = rod.Style with { Scale = larger } }), s => s.Scale == larger);
        }
    }

    [Fact]
    public void A_string_of_two_and_a_half_metres_lies_on_one_strip_of_a_roll_and_on_many_sheets()
    {
        var fits = PaperFit.All(RodJobs.Of("left-kite-low")).ToDictionary(f => f.Paper.Name, f => f.Strings.Single(s => s.PartId == "newel-string-2").Pages);
        Assert.Equal(1, fits["roll 610"]);
        Assert.Equal(1, fits["roll 914"]);
        // About 2,5 m by 0,3 m: three lengths of A0's long side less its margins; A4 shows 180 by 241 of it.
        Assert.Equal(3, fits["A0"]);
        Assert.InRange(fits["A4"], 20, 26);
    }
}
