using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using Rodwright.Store.Rows;

namespace Rodwright.Store;

/// <summary>The tables of a store, the same for every provider. Names are spelled out: people read them in a shell.</summary>
internal sealed class StoreContext(DbContextOptions<StoreContext> options) : DbContext(options)
{
    // A provider gives a time back without saying that it is UTC. Kept as DateTime because SQLite cannot sort the type with an offset.
    private static readonly ValueConverter<DateTimeOffset, DateTime> Utc =
        new(at => at.UtcDateTime, stored => new DateTimeOffset(DateTime.SpecifyKind(stored, DateTimeKind.Utc)));

    public DbSet<JobRow> Jobs => Set<JobRow>();

    public DbSet<RevisionRow> Revisions => Set<RevisionRow>();

    public DbSet<OwnTableRow> Tables => Set<OwnTableRow>();

    public DbSet<ShopRow> Shops => Set<ShopRow>();

    protected override void OnModelCreating(ModelBuilder model)
    {
        model.Entity<JobRow>(job =>
        {
            job.ToTable("jobs").HasKey(j => j.Id).HasName("jobs_key");
            job.Property(j => j.Id).HasColumnName("id").ValueGeneratedNever();
            job.Property(j => j.Title).HasColumnName("title");
            job.Property(j => j.Summary).HasColumnName("summary");
            job.Property(j => j.Revision).HasColumnName("revision").IsConcurrencyToken();
            job.Property(j => j.ChangedBy).HasColumnName("changed_by");
            job.Property(j => j.ChangedAt).HasColumnName("changed_utc").HasConversion(Utc);
            job.Property(j => j.Archived).HasColumnName("archived");
            job.Property(j => j.Search).HasColumnName("search");
            job.HasIndex(j => new { j.Archived, j.ChangedAt, j.Id }).HasDatabaseName("jobs_by_change");
        });
        model.Entity<OwnTableRow>(table =>
        {
            table.ToTable("regulation_tables").HasKey(t => t.Id).HasName("regulation_tables_key");
            table.Property(t => t.Id).HasColumnName("id").HasColumnOrder(0);
            table.Property(t => t.Title).HasColumnName("title").HasColumnOrder(1);
            table.Property(t => t.Version).HasColumnName("version").HasColumnOrder(2).IsConcurrencyToken();
            table.Property(t => t.ChangedBy).HasColumnName("changed_by").HasColumnOrder(3);
            table.Property(t => t.ChangedAt).HasColumnName("changed_utc").HasColumnOrder(4).HasConversion(Utc);
            table.Property(t => t.Text).HasColumnName("text").HasColumnOrder(5);
        });
        model.Entity<ShopRow>(shop =>
        {
            // The key is what lets one writer of a version win.
            shop.ToTable("shop_versions").HasKey(s => s.Version).HasName("shop_versions_key");
            shop.Property(s => s.Version).HasColumnName("version").HasColumnOrder(0).ValueGeneratedNever();
            shop.Property(s => s.ChangedBy).HasColumnName("changed_by").HasColumnOrder(1);
            shop.Property(s => s.ChangedAt).HasColumnName("changed_utc").HasColumnOrder(2).HasConversion(Utc);
            shop.Property(s => s.Ticket).HasColumnName("ticket").HasColumnOrder(3);
            shop.Property(s => s.Text).HasColumnName("text").HasColumnOrder(4);
        });
        model.Entity<RevisionRow>(revision =>
        {
            // The key is what lets one writer of a number win; the text comes last, so that lists do not read past it.
            revision.ToTable("revisions").HasKey(r => new { r.Job, r.Number }).HasName("revisions_key");
            revision.Property(r => r.Job).HasColumnName("job").HasColumnOrder(0);
            revision.Property(r => r.Number).HasColumnName("number").HasColumnOrder(1).ValueGeneratedNever();
            revision.Property(r => r.Kind).HasColumnName("kind").HasColumnOrder(2).HasConversion<int>();
            revision.Property(r => r.Words).HasColumnName("words").HasColumnOrder(3);
            revision.Property(r => r.Name).HasColumnName("name").HasColumnOrder(4);
            revision.Property(r => r.By).HasColumnName("made_by").HasColumnOrder(5);
            revision.Property(r => r.At).HasColumnName("made_utc").HasColumnOrder(6).HasConversion(Utc);
            revision.Property(r => r.Ticket).HasColumnName("ticket").HasColumnOrder(7);
            revision.Property(r => r.Text).HasColumnName("text").HasColumnOrder(8);
            // Nothing is ever lost: a job with revisions cannot be deleted.
            revision.HasOne<JobRow>().WithMany().HasForeignKey(r => r.Job).HasConstraintName("revisions_of_job").OnDelete(DeleteBehavior.Restrict);
        });
    }
}
