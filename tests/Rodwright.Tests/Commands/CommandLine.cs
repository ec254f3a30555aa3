namespace Rodwright.Tests.Commands;

/// <summary>Runs the program in this process, with its own surroundings and a folder that is thrown away.</summary>
internal sealed class CommandLine : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("rodwright-");

    public string Folder => folder.FullName;

    public string PathOf(string name) => Path.Combine(Folder, name);

    public string Write(string name, string text)
    {
        File.WriteAllText(PathOf(name), text);
        return PathOf(name);
    }

    public static (int Exit, string Out, string Error) Run(params string[] args)
    {
        var (output, error) = (new StringWriter(), new StringWriter());
        var exit = Program.Run(args, new Surroundings(output, error, new FixedTime()));
        return (exit, output.ToString(), error.ToString());
    }

    public void Dispose() => folder.Delete(recursive: true);

    private sealed class FixedTime : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => new(2026, 3, 2, 9, 0, 0, TimeSpan.Zero);

        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;
    }
}
