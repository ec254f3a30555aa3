using System.Text.Json;
using Json.Schema;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Stairs.Tests.Jobs;

/// <summary>The printed schema, judged by an independent validator, against the reader.</summary>
public sealed class SchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(JobSchema.Text());

    public static TheoryData<string> Names => [.. Samples.Names];

    public static TheoryData<string> Refused => [.. BadInputs.Fields.Concat(BadSurveys.Fields).Select(b => b.What)];

    public static TheoryData<string> BeyondIt => [.. BadInputs.Contradictions.Concat(BadSurveys.Contradictions).Where(b => b.Code is not "RW1041").Select(b => b.What)];

    private static bool IsValid(string text)
    {
        using var document = JsonDocument.Parse(text);
        return Schema.Evaluate(document.RootElement).IsValid;
    }

    [Fact]
    public void The_schema_is_a_valid_schema()
    {
        using var document = JsonDocument.Parse(JobSchema.Text());
        Assert.True(MetaSchemas.Draft202012.Evaluate(document.RootElement).IsValid);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_sample_keeps_the_schema(string name) => Assert.True(IsValid(Samples.Text(name)));

    [Fact]
    public void What_is_written_keeps_the_schema() => Assert.True(IsValid(JobFile.Write(JobFile.Read(GoodJob.Text).Value!)));

    [Fact]
    public void A_whole_survey_keeps_the_schema_written_by_hand_or_by_the_program()
    {
        Assert.True(IsValid(GoodSurvey.Text));
        Assert.True(IsValid(JobFile.Write(JobFile.Read(GoodSurvey.Text).Value!)));
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public void What_the_reader_refuses_in_a_field_the_schema_refuses_too(string what) =>
        Assert.False(IsValid(BadInputs.All.Single(b => b.What == what).Text));

    [Theory]
    [MemberData(nameof(BeyondIt))]
    public void A_contradiction_between_fields_is_the_readers_alone_to_find(string what) =>
        Assert.True(IsValid(BadInputs.All.Single(b => b.What == what).Text));

    [Fact]
    public void Every_field_that_is_described_stands_in_the_schema()
    {
        foreach (var field in Rodwright.Stairs.Jobs.Fields.JobFields.Descriptions)
            Assert.Contains($"\"{field.Path[(field.Path.LastIndexOf('.') + 1)..].Replace("[]", "", StringComparison.Ordinal)}\"", JobSchema.Text(), StringComparison.Ordinal);
    }
}
