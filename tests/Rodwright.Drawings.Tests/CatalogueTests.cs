using System.Reflection;
using Rodwright.Drawings.Marks;
using Xunit;

namespace Rodwright.Drawings.Tests;

public sealed class CatalogueTests
{
    [Fact]
    public void Every_layer_and_dash_is_listed_once_under_a_name_safe_in_files()
    {
        Assert.Equal(Named<Layer>(), Layer.All.ToHashSet());
        Assert.Equal(Named<Dash>(), Dash.All.ToHashSet());
        Assert.Equal(Layer.All.Count, Layer.All.Select(l => l.Id).Distinct().Count());
        Assert.All(Layer.All.Select(l => l.Id).Concat(Dash.All.Select(d => d.Id)), id => Assert.Matches("^[a-z]+(-[a-z]+)*$", id));
    }

    [Fact]
    public void The_pens_have_the_widths_drawings_are_read_by()
    {
        Assert.Equal([0.5, 0.35, 0.25, 0.25, 0.18, 0.13, 0.18], new[] { Pens.Outline, Pens.Visible, Pens.Hidden, Pens.Nosing, Pens.Centre, Pens.Construction, Pens.Dimension }.Select(p => p.Width));
        Assert.True(Pens.Construction.Ink < 1);
        Assert.NotEqual(Pens.Hidden.Dash, Pens.Nosing.Dash);
        Assert.All(Dash.All, d => Assert.Equal(0, d.Lengths.Length % 2));
    }

    private static HashSet<T> Named<T>() =>
        [.. typeof(T).GetProperties(BindingFlags.Public | BindingFlags.Static).Where(p => p.PropertyType == typeof(T)).Select(p => (T)p.GetValue(null)!)];
}
