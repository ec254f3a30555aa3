using Rodwright.Drawings.Formats;

namespace Rodwright.Output;

/// <summary>
/// Puts a pack's files into a folder: each is written beside its place and then renamed, so that a file is whole or absent. What an earlier pack left there
/// and this one no longer has is removed, by the earlier pack's own list of contents; nothing else in the folder is touched.
/// </summary>
internal static class PackFolder
{
    private const string Contents = "contents.csv";

    public static void Write(string folder, IReadOnlyCollection<WrittenFile> files)
    {
        Directory.CreateDirectory(folder);
        var before = Listed(Path.Combine(folder, Contents));
        foreach (var file in files)
        {
            var path = Path.Combine([folder, .. file.Name.Split('/')]);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            var beside = path + ".new";
            using (var stream = File.Create(beside)) stream.Write(file.Bytes.Span);
            File.Move(beside, path, overwrite: true);
        }
        foreach (var name in before.Except(files.Select(f => f.Name)))
        {
            var path = Path.GetFullPath(Path.Combine([folder, .. name.Split('/')]));
            // The list is only trusted for files inside the folder.
            if (path.StartsWith(Path.GetFullPath(folder) + Path.DirectorySeparatorChar, StringComparison.Ordinal) && File.Exists(path)) File.Delete(path);
        }
    }

    private static List<string> Listed(string contents)
    {
        if (!File.Exists(contents)) return [];
        return [.. File.ReadLines(contents).Skip(1).Select(line => line.Split(',')[0]).Where(name => name.Length > 0 && !name.Contains('"'))];
    }
}
